/** The mark on a picture that leads to a film: a triangle on a disc, as players draw it. */

/** Diameter of the disc, as a share of the picture's shorter side. */
const DISC = 0.19;

/**
 * SVG of a picture's size with the mark in its middle. The dark disc and the pale rim keep the triangle in sight on
 * any photo; there is no text in it, so it is drawn alike on every machine.
 */
export const playMark = (width: number, height: number): string => {
  const [x, y] = [width / 2, height / 2];
  const radius = (Math.min(width, height) * DISC) / 2;
  const at = (dx: number, dy: number): string =>
    `${(x + dx * radius).toFixed(2)},${(y + dy * radius).toFixed(2)}`;
  // A triangle looks centred when its centroid is: that is a third of its depth from the upright side.
  const triangle = [at(-0.3, -0.5), at(0.6, 0), at(-0.3, 0.5)].join(' ');
  return `<svg xmlns="http://www.w3.org/2000/svg" width="${width}" height="${height}"><circle cx="${x}" cy="${y}" r="${radius.toFixed(2)}" fill="#191815" fill-opacity="0.66" stroke="#fbfaf6" stroke-opacity="0.92" stroke-width="${(radius * 0.055).toFixed(2)}"/><polygon points="${triangle}" fill="#fbfaf6"/></svg>`;
};
