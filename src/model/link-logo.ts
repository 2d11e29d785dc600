/** The box's logo: a picture that search engines and mail programs take. */
import type { Usable } from '../content/read.ts';
import type { BoxRecord } from '../content/schemas.ts';
import type { ReportFinding } from '../diagnostics/diagnostic.ts';
import type { Picture } from './box.ts';
import { LEAST_LOGO } from './logo-size.ts';
import { type Photos, recordPicture } from './pictures.ts';

const isDrawing = (file: string): boolean => /\.(?:svgz?|pdf|ai|eps)$/i.test(file);

/** The logo that box.md names; mail programs show no drawing, so it is a picture of pixels; undefined with a finding. */
export const linkLogo = (
  record: Usable<BoxRecord>,
  written: NonNullable<BoxRecord['logo']>,
  photos: Photos,
  report: ReportFinding,
): Picture | undefined => {
  const named = typeof written === 'string' ? { file: written, alt: record.value.name } : written;
  const location = record.locationOf(['logo']);
  if (isDrawing(named.file)) {
    report({
      weight: 'must fix',
      rule: 'logo-drawing',
      location,
      message: `Unexpected logo \`${named.file}\`, expected a picture of pixels, as a PNG`,
      fix: 'Export it as a PNG, 512 pixels on its longer side, with nothing behind it: mail programs show no drawings',
    });
    return undefined;
  }
  const logo = recordPicture(photos, '', named, location, report);
  if (logo && Math.min(logo.width, logo.height) < LEAST_LOGO)
    report({
      weight: 'look at',
      rule: 'logo-small',
      location,
      message: `Unexpected logo of ${logo.width} × ${logo.height} pixels, expected ${LEAST_LOGO} or more each way`,
      fix: 'Export it larger, best 512 pixels on its longer side: search engines leave out a smaller one',
    });
  return logo;
};
