/** Words by which a text tells how a thing is used, cared for or made. Common English usage, no source. */
export const TELLING = `
  use using put fill hang pour cut open close wear plant press turn hold carry lay fold tie spread stir mix roll draw write
  read play light burn eat drink brew bake cook sow water feed fit screw clip pin sew stitch knit work last try
  care wash dry oil clean wipe rinse store keep sharpen brush dust polish scrub soak air iron mend repair protect
  make made maker making hand carve throw weave print forge cast glaze blend roast dye craft workshop mill studio kiln
  press turned family grow
`;
