import { describe, expect, test } from 'vitest';
import { htmlSource } from '../../src/render/html.ts';
import { pictureMarkup, socialPicture, widestPath } from '../../src/render/pictures.ts';
import { picture } from '../support/box.ts';

const layout = { name: 'plate', widths: [400, 800], sizes: '(min-width: 60rem) 24rem, 100vw' };
const page = 'boxes/a.html';

describe('picture markup', () => {
  test('names exactly the files that it asks for', () => {
    const { html, outputs } = pictureMarkup(picture(), layout, page);
    const named = new Set(htmlSource(html).match(/pictures\/[^\s",]+/g));
    expect(named).toEqual(new Set(outputs.map((output) => output.path)));
    expect(outputs).toHaveLength(6);
  });
  test('gives each width its rendition and the layout’s sizes', () => {
    const source = htmlSource(pictureMarkup(picture(), layout, page).html);
    expect(source).toMatch(
      /<source type="image\/avif" srcset="\.\.\/pictures\/mister-1-400\.[0-9a-f]{10}\.avif 400w, \.\.\/pictures\/mister-1-800\.[0-9a-f]{10}\.avif 800w" sizes="\(min-width: 60rem\) 24rem, 100vw">/,
    );
    expect(source).toContain('width="800" height="533"');
    expect(source).toContain('loading="lazy" decoding="async" data-tint="#8a9a7b"');
  });
  test('names the widest JPEG where one file stands for the picture', () => {
    for (const shown of [picture(), picture({ width: 300, height: 200 })])
      expect(pictureMarkup(shown, layout, page).outputs.at(-1)?.path).toBe(widestPath(shown, layout));
  });
  test('never asks for more pixels than the photo has', () => {
    const small = picture({ width: 300, height: 200 });
    expect(pictureMarkup(small, layout, page).outputs.map(({ picture: job }) => job.width)).toEqual([
      300, 300, 300,
    ]);
    const cropped = pictureMarkup(
      picture({ width: 900, height: 500 }),
      { ...layout, ratio: 1 },
      page,
    ).outputs;
    for (const { picture: job } of cropped) expect([job.width, job.height]).toEqual([400, 400]);
    expect(socialPicture(small).picture).toMatchObject({ width: 300, height: 157 });
  });
  test('is made in every width that the photo just fills', () => {
    const widths = (photo: ReturnType<typeof picture>, ratio?: number): readonly number[] => [
      ...new Set(
        pictureMarkup(photo, { ...layout, ...(ratio !== undefined && { ratio }) }, page).outputs.map(
          ({ picture: job }) => job.width,
        ),
      ),
    ];
    expect(widths(picture({ width: 800, height: 600 }))).toEqual([400, 800]);
    expect(widths(picture({ width: 799, height: 600 }))).toEqual([400]);
    expect(widths(picture({ width: 900, height: 400 }), 2)).toEqual([400, 800]);
  });
  test('names stay while photo and recipe stay, and change with either', () => {
    const path = (more: Parameters<typeof picture>[0]) => socialPicture(picture(more)).path;
    expect(path({})).toBe(path({ alt: 'Other words', caption: 'Others' }));
    expect(path({})).not.toBe(path({ hash: 'b'.repeat(64) }));
    expect(path({})).not.toBe(path({ focus: { x: 0.5, y: 0.4 } }));
  });
  test('the first picture of a page is loaded at once', () => {
    const source = htmlSource(pictureMarkup(picture(), layout, page, { eager: true }).html);
    expect(source).toContain('fetchpriority="high"');
    expect(source).not.toContain('loading=');
  });
  test('away from the site a picture is one JPEG, which the page has too, of at most 960 pixels', () => {
    const wide = { ...layout, widths: [400, 960, 1280] };
    const { html, outputs } = pictureMarkup(picture(), wide, page, {
      away: (path) => `https://x.example/${path}`,
    });
    const paths = pictureMarkup(picture(), wide, page).outputs.map(({ path }) => path);
    expect(outputs).toHaveLength(1);
    expect(paths).toContain(outputs[0]?.path);
    expect(htmlSource(html)).toBe(
      `<img src="https://x.example/${outputs[0]?.path}" width="960" height="640" alt="A brass mister">`,
    );
  });
  test('words for those who cannot see it cannot end the attribute', () => {
    const source = htmlSource(pictureMarkup(picture({ alt: '"><b>' }), layout, page).html);
    expect(source).toContain('alt="&quot;&gt;&lt;b&gt;"');
  });
});
