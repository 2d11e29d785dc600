/** Colours of a record: each beside its code, to be picked. */

const HEX = /^#[\da-f]{6}$/i;

/** Puts a picker for each colour below every field of colours. */
export const colourPickers = (): void => {
  for (const area of document.querySelectorAll<HTMLTextAreaElement>('textarea[data-colours]')) {
    const row = document.createElement('div');
    row.className = 'colour-row';
    area.after(row);
    const draw = (): void => {
      const codes = area.value
        .split('\n')
        .map((code) => code.trim())
        .filter(Boolean);
      if (row.childElementCount === codes.length && row.contains(document.activeElement)) return;
      row.replaceChildren(
        ...codes.map((code, i) => {
          const picker = document.createElement('input');
          picker.type = 'color';
          picker.value = HEX.test(code) ? code : '#808080';
          picker.setAttribute('aria-label', `${area.dataset.colours} ${i + 1}`);
          picker.addEventListener('input', () => {
            const lines = area.value
              .split('\n')
              .map((line) => line.trim())
              .filter(Boolean);
            lines[i] = picker.value;
            area.value = lines.join('\n');
            area.dispatchEvent(new Event('input', { bubbles: true }));
          });
          return picker;
        }),
      );
    };
    draw();
    area.addEventListener('input', draw);
  }
};
