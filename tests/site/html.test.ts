import { describe, expect, inject, test } from 'vitest';
import { htmlValidateFaults, nuErrors } from '../support/html-checkers.ts';
import { describeWith, pagesBelow } from '../support/tools.ts';

const site = inject('demoSite');

describeWith('java', 'default-jre-headless', 'every page', () => {
  // The Nu HTML Checker (vnu-jar): the WHATWG HTML standard as validator.nu checks it.
  test('passes the Nu checker without an error', () => {
    expect(nuErrors(site)).toEqual([]);
    expect(pagesBelow(site).length).toBeGreaterThan(16);
  });
});

describe('every page', () => {
  test('passes html-validate’s recommended, document and accessibility rules', async () => {
    const faults: string[] = [];
    for (const { path, text } of pagesBelow(site))
      faults.push(...(await htmlValidateFaults(text)).map((fault) => `${path}:${fault}`));
    expect(faults).toEqual([]);
  });
});
