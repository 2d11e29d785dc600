/** What the papers of a cycle that are carried about begin with: the run sheet, the clip sheet. */
import type { BoxSettings, Cycle } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import type { Wording } from '../wording/wording.ts';
import { schemeElement } from './document.ts';
import { embeddedFonts } from './embedded-fonts.ts';
import { type Html, joinHtml } from './html.ts';
import { pageLang } from './page-lang.ts';
import type { Templates } from './templates.ts';
import { typeset } from './typeset.ts';

/** Colours and type of a paper: it is one file by itself, so both are inside it. */
export const paperStyle = (palette: readonly string[], templates: Templates): Html =>
  joinHtml([schemeElement(palette), embeddedFonts(templates)]);

/** The line at the head of every paper of the back room: the way back to its first page, and that it is private. */
export const backRoomLine = (
  { name, lang }: Pick<BoxSettings, 'name' | 'lang'>,
  { backRoom }: Pick<Wording, 'backRoom'>,
) => ({ backRoom: backRoom.of(typeset(name, lang)), isPrivate: backRoom.isPrivate });

interface PaperWords {
  readonly title: (month: string, theme: string, box: string) => string;
  readonly heading: (month: string) => string;
}

/** The head of a paper. `words` are its own; it stands by itself, so the text face is inside it. */
export const paperHead = <Words extends PaperWords>(
  {
    cycle,
    settings,
  }: {
    readonly cycle: Pick<Cycle, 'year' | 'month' | 'theme' | 'palette'>;
    readonly settings: Pick<BoxSettings, 'name' | 'lang'>;
  },
  words: Words,
  { templates, wording }: { readonly templates: Templates; readonly wording: Wording },
) => {
  const { lang } = settings;
  const own = pageLang(lang);
  const month = monthName(cycle, own);
  const theme = typeset(cycle.theme, lang);
  const name = typeset(settings.name, lang);
  return {
    words,
    lang: own,
    textLang: lang,
    pageTitle: words.title(month, theme, name),
    ...backRoomLine(settings, wording),
    heading: words.heading(month),
    theme,
    scheme: schemeElement(cycle.palette),
    fonts: embeddedFonts(templates),
  };
};
