/**
 * axe-core over a page as it is shown on screens of several widths, light and dark: https://github.com/dequelabs/axe-core.
 * Where the dark page has every box where the light one has it, only its colours can break a rule, so that only the rules
 * of colours are asked a second time.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import type { Page } from 'playwright-core';

const AXE = readFileSync(createRequire(import.meta.url).resolve('axe-core/axe.min.js'), 'utf8');

/** axe's own name for the rules that look at colours. */
const OF_COLOURS = 'cat.color';

/** Every box of the page with whether it is seen: what the rules that look at no colours go by, beside the markup. */
const BOXES = `JSON.stringify([...document.querySelectorAll('*')].map((one) => {
  const { x, y, width, height } = one.getBoundingClientRect();
  return [one.checkVisibility({ visibilityProperty: true, opacityProperty: true }), x, y, width, height];
}))`;

/** A scheme's colours may come by a transition, and would be measured half way. */
const SETTLED = `Promise.all(
  document.getAnimations().filter((one) => one instanceof CSSTransition).map((one) => one.finished),
).then(() => undefined)`;

export interface AxeLooks {
  /** Widths of the screen, in CSS pixels. */
  readonly widths: readonly number[];
  /** Tags of the rules to ask; all that axe asks by itself where absent. */
  readonly tags?: readonly string[];
}

/** What axe finds in what the page shows now, each as `rule: where`; `onlyColours` leaves the other rules out. */
export const axeFaults = async (
  page: Page,
  { tags, onlyColours = false }: { readonly tags?: readonly string[]; readonly onlyColours?: boolean } = {},
): Promise<readonly string[]> => {
  if (!(await page.evaluate<boolean>("'axe' in globalThis"))) await page.evaluate(AXE);
  const [wanted, colours] = [JSON.stringify(tags ?? null), JSON.stringify(onlyColours && OF_COLOURS)];
  return page.evaluate<readonly string[]>(`(async (tags, colours) => {
    const others = axe.getRules().filter((rule) => colours && !rule.tags.includes(colours));
    const { violations } = await axe.run({
      // What passed is not asked for, and to tell of it costs axe more than to find it.
      resultTypes: ['violations'],
      ...(tags && { runOnly: tags }),
      rules: Object.fromEntries(others.map(({ ruleId }) => [ruleId, { enabled: false }])),
    });
    return violations.map(({ id, nodes }) => id + ': ' + nodes.map(({ target }) => target.join(' ')).join(', '));
  })(${wanted}, ${colours})`);
};

/**
 * What axe finds at each width, light and dark, each as `scheme at width px: rule: where`, and whether the page is wider
 * than the screen (WCAG 2.2, 1.4.10 Reflow). The page is left dark and at the last width.
 */
export const faultsOfLooks = async (page: Page, { widths, tags }: AxeLooks): Promise<readonly string[]> => {
  const found: string[] = [];
  const asked = tags ? { tags } : {};
  for (const width of widths) {
    await page.setViewportSize({ width, height: 900 });
    let light = '';
    for (const colorScheme of ['light', 'dark'] as const) {
      await page.emulateMedia({ colorScheme });
      await page.evaluate(SETTLED);
      const boxes = await page.evaluate<string>(BOXES);
      const wide = await page.evaluate<number>('document.documentElement.scrollWidth');
      const faults = [
        ...(await axeFaults(page, { ...asked, onlyColours: boxes === light })),
        ...(wide > width ? [`the page is ${wide} px wide`] : []),
      ];
      found.push(...faults.map((fault) => `${colorScheme} at ${width} px: ${fault}`));
      light = boxes;
    }
  }
  return found;
};
