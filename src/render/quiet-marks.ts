/** Small drawings that say how much without colour, and are printed as they are. */
import { type Html, html } from './html.ts';

/** A square filled, half filled, hatched, empty, small or missing: symbols of the page's sprite (proof-squares.eta). */
export const squareMark = (name: string): Html =>
  html`<svg class="square" viewBox="0 0 12 12" aria-hidden="true"><use href="#mark-${name.replaceAll(' ', '-')}"/></svg>`;

/** A share from 0 to 1 as a stroke along a hairline, with a tick at another share. */
export const shareBar = (share: number, tick: number): Html => {
  const [far, at] = [share, tick].map((one) => (one * 100).toFixed(1));
  return html`<svg class="bar" viewBox="0 0 100 8" preserveAspectRatio="none" aria-hidden="true"><path class="way" vector-effect="non-scaling-stroke" d="M0 4H100"/><path class="far" vector-effect="non-scaling-stroke" d="M0 4H${far}"/><path class="tick" vector-effect="non-scaling-stroke" d="M${at} 0V8"/></svg>`;
};
