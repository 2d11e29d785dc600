/** The style sheet, the fonts and the site's icon. */
import type { Box } from '../model/box.ts';
import { assetOutputs } from '../render/assets.ts';
import { schemesOf } from '../render/colours.ts';
import { escapeHtml } from '../render/html.ts';
import { ICON_PATH } from '../render/page.ts';
import type { Channel } from './channel.ts';

/** A plant label with the box's first letter, in the box's own colours; follows light and dark. */
const icon = ({ settings }: Box): string => {
  const { light, dark } = schemesOf(settings.palette);
  const letter = escapeHtml([...settings.name][0] ?? '');
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><style>path{fill:${light.accent}}text{fill:${light.onAccent};font:40px Georgia,serif}@media (prefers-color-scheme:dark){path{fill:${dark.accent}}text{fill:${dark.onAccent}}}</style><path d="M10 4h44v40L32 62 10 44z"/><text x="32" y="40" text-anchor="middle">${letter}</text></svg>\n`;
};

export const assets: Channel<'site'> = {
  name: 'assets',
  where: 'site',
  make: ({ box, templates }) => ({
    outputs: [...assetOutputs(templates), { where: 'site', path: ICON_PATH, text: icon(box) }],
    diagnostics: [],
  }),
};
