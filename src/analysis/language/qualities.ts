/** What a record says of a colour or a material, taken apart: the catalogue and the proof read it alike. */

/** "Beech and oiled steel (recycled)" as its parts: "Beech", "oiled steel", "recycled". */
export const qualitiesIn = (text: string): readonly string[] =>
  text
    .split(/[,;/&+()]|\s(?:and|with|or)\s/i)
    .map((part) => part.trim())
    .filter((part) => part !== '');
