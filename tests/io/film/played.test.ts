/** A film of ours in a real browser: whether it plays to its end, how long it says it is, and that its sound decodes. */
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { chromium } from 'playwright-core';
import { expect, test } from 'vitest';
import { encodeEmbedded } from '../../../src/io/film/embedded.ts';
import { CHROMIUM } from '../../support/chromium.ts';

test('a film plays in Chromium from its start to its end', async () => {
  const { bytes: film } = await encodeEmbedded(
    {
      width: 216,
      height: 384,
      rate: 30,
      frames: 45,
      cuts: [0, 20],
      make: async (frame, into) => void into.fill(60 + frame),
    },
    1e6,
  );
  const dir = mkdtempSync(join(tmpdir(), 'lidlore-film-'));
  writeFileSync(join(dir, 'clip.mp4'), film);
  writeFileSync(join(dir, 'page.html'), '<!doctype html><video src="clip.mp4" muted></video>');
  const browser = await chromium.launch({
    ...CHROMIUM,
    args: [...(CHROMIUM.args ?? []), '--autoplay-policy=no-user-gesture-required'],
  });
  try {
    const page = await browser.newPage();
    await page.goto(pathToFileURL(join(dir, 'page.html')).href);
    const seen = await page.evaluate(
      `new Promise((resolve) => {
        const video = document.querySelector('video');
        const told = (how) => resolve({ how, duration: video.duration, width: video.videoWidth, height: video.videoHeight,
          at: video.currentTime, error: video.error && video.error.message, heard: video.webkitAudioDecodedByteCount > 0 });
        video.onended = () => told('ended');
        video.onerror = () => told('error');
        setTimeout(() => told('late'), 30000);
        video.play().catch(() => {});
      })`,
    );
    expect(seen).toMatchObject({ how: 'ended', width: 216, height: 384, heard: true });
    expect((seen as { duration: number }).duration).toBeCloseTo(1.5, 2);
  } finally {
    await browser.close();
    rmSync(dir, { recursive: true, force: true });
  }
}, 90_000);
