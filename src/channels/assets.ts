/** The style sheet, the fonts and the site's icon. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { publishedAssets } from '../render/assets.ts';
import { schemesOf } from '../render/colours.ts';
import { escapeHtml } from '../render/html.ts';
import type { MadeDocument } from '../render/output.ts';
import { ICON_PATH } from '../render/page.ts';
import { type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

interface IconData {
  readonly name: string;
  readonly palette: readonly string[];
}

/** A plant label with the box's first letter, in the box's own colours; follows light and dark. */
const icon = ({ name, palette }: IconData): MadeDocument<Diagnostic> => {
  const { light, dark } = schemesOf(palette);
  const letter = escapeHtml([...name][0] ?? '');
  return {
    content: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><style>path{fill:${light.accent}}text{fill:${light.onAccent};font:40px Georgia,serif}@media (prefers-color-scheme:dark){path{fill:${dark.accent}}text{fill:${dark.onAccent}}}</style><path d="M10 4h44v40L32 62 10 44z"/><text x="32" y="40" text-anchor="middle">${letter}</text></svg>\n`,
  };
};

/** A file of templates/, by the path that bears its hash. */
const asset = (path: string, { templates }: Tools): MadeDocument<Diagnostic> => {
  const content = publishedAssets(templates).get(path);
  if (content === undefined) throw new Error(`Expected a file of templates/ that is published as ${path}`);
  return { content };
};

/** The style sheets, fonts and pictures of templates/, and the icon. */
export const assets: PlanningChannel<'site'> = {
  name: 'assets',
  where: 'site',
  plan: ({ box: { settings }, templates }) => ({
    documents: [
      ...[...publishedAssets(templates).keys()].map((path) => plannedDocument(path, 'asset', path, asset)),
      plannedDocument(ICON_PATH, 'asset', { name: settings.name, palette: settings.palette }, icon),
    ],
  }),
};
