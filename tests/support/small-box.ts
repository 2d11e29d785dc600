/** A small box's own record, for tests that care about a few of its fields. */

/** The text of a box.md: `more` are lines of further fields, `body` what stands below them. */
export const smallBox = (
  more: string,
  body = '',
  { timeZone = 'Europe/London', currency = 'GBP' } = {},
): string => `---
name: Crumb & Co
url: https://crumb.example/
lang: en-GB
timeZone: ${timeZone}
currency: ${currency}
description: A small box.
author: Ada Crumb
${more}---
${body}`;
