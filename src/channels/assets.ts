/** The style sheet, the fonts and the site's icons. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { BoxSettings } from '../model/box.ts';
import { publishedAssets } from '../render/assets.ts';
import { schemesOf } from '../render/colours.ts';
import { escapeHtml } from '../render/html.ts';
import type { MadeDocument } from '../render/output.ts';
import { DARK_ICON_PATH, ICON_PATH } from '../render/page.ts';
import { logoPicture } from '../render/pictures.ts';
import { type PlannedDocument, type PlanningChannel, plannedDocument, type Tools } from './channel.ts';

interface IconData {
  readonly name: string;
  readonly palette: readonly string[];
  readonly dark: boolean;
}

/** A plant label with the box's first letter, in the box's own colours. One each for light and dark: it holds no style. */
const icon = ({ name, palette, dark }: IconData): MadeDocument<Diagnostic> => {
  const { accent, onAccent } = schemesOf(palette)[dark ? 'dark' : 'light'];
  const letter = escapeHtml([...name][0] ?? '');
  return {
    content: `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 64 64"><path fill="${accent}" d="M10 4h44v40L32 62 10 44z"/><text x="32" y="40" fill="${onAccent}" font-family="Georgia,serif" font-size="40" text-anchor="middle">${letter}</text></svg>\n`,
  };
};

const iconDocument = (path: string, { name, palette }: BoxSettings, dark: boolean): PlannedDocument =>
  plannedDocument(path, 'asset', { name, palette, dark }, icon);

/** A file of templates/, by the path that bears its hash. */
const asset = (path: string, { templates }: Tools): MadeDocument<Diagnostic> => {
  const content = publishedAssets(templates).get(path);
  if (content === undefined) throw new Error(`Expected a file of templates/ that is published as ${path}`);
  return { content };
};

/** The style sheets, fonts and pictures of templates/, the icons and the logo. */
export const assets: PlanningChannel<'site'> = {
  name: 'assets',
  where: 'site',
  plan: ({ box: { settings }, templates }) => ({
    documents: [
      ...[...publishedAssets(templates).keys()].map((path) => plannedDocument(path, 'asset', path, asset)),
      iconDocument(ICON_PATH, settings, false),
      iconDocument(DARK_ICON_PATH, settings, true),
    ],
    pictures: settings.logo ? [logoPicture(settings.logo)] : [],
  }),
};
