/** Debian's Chromium, as a machine without a screen or a network starts it. */
import type { LaunchOptions } from 'playwright-core';

export const CHROMIUM: LaunchOptions = {
  executablePath: '/usr/bin/chromium',
  args: [
    '--headless',
    '--no-sandbox',
    '--disable-gpu',
    '--disable-quic',
    '--no-first-run',
    '--disable-background-networking',
    '--disable-component-update',
    '--disable-sync',
  ],
};
