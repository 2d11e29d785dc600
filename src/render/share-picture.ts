/** The picture of an article's link preview: its name on paper, its picture beside it. */
import type { BoxSettings, Cycle } from '../model/box.ts';
import { monthName } from '../model/calendar.ts';
import { schemesOf } from './colours.ts';
import { type DrawingFaces, drawingFor, drawingJob, drawnPicture } from './drawing.ts';
import type { DrawingJob, PictureOutput } from './output.ts';
import { typeset } from './typeset.ts';

/** Of a key, in a published name: enough that two of a site's pictures never share one. */
const NAMED_DIGITS = 10;

/** An article's share picture with its words for people who cannot see it. Its name changes when the picture does. */
export const sharePicture = (
  cycle: Cycle,
  site: Pick<BoxSettings, 'name' | 'lang'>,
  faces: DrawingFaces,
): PictureOutput<DrawingJob> & { readonly alt: string } => {
  const { lang } = site;
  const picture = cycle.wholeBox ?? cycle.hero;
  const { paper, wash, ink, soft, accent, onAccent, hair } = schemesOf(cycle.palette).light;
  const name = typeset(cycle.title, lang);
  const drawing = drawingFor('share', {
    layout: 'plate',
    lang,
    colours: { paper, wash, ink, soft, accent, onAccent, hair },
    palette: cycle.palette,
    entries: [
      {
        label: `${typeset(site.name, lang)} · ${monthName(cycle, lang)}`,
        name,
        lines: [],
        cautions: [],
        ...(picture && { picture: 0 }),
      },
    ],
    pictures: picture ? [drawnPicture(picture)] : [],
  });
  const job = drawingJob(drawing, faces);
  return {
    where: 'site',
    path: `pictures/${cycle.id}-share.${job.key.slice(0, NAMED_DIGITS)}.jpg`,
    picture: job,
    alt: picture ? `${name}. ${typeset(picture.alt, lang)}` : name,
  };
};
