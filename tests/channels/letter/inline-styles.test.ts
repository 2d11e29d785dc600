import { expect, test } from 'vitest';
import { withInlineStyles } from '../../../src/channels/letter/inline-styles.ts';

// W3C Selectors 3, §9 and CSS 2.2, §6.4.3: the more specific rule wins, of equal ones the later.
test.each([
  ['an element', 'p{margin:0}', '<p>a</p>', '<p style="margin: 0;">a</p>'],
  ['a class', '.a{margin:0}', '<p class="b a">a</p>', '<p class="b a" style="margin: 0;">a</p>'],
  [
    'a class over an element, wherever it stands',
    '.a{margin:1px}\np{margin:0}',
    '<p class="a">a</p>',
    '<p class="a" style="margin: 1px;">a</p>',
  ],
  [
    'of two classes the later rule',
    '.b{margin:1px}.a{margin:2px}',
    '<p class="a b">a</p>',
    '<p class="a b" style="margin: 2px;">a</p>',
  ],
  [
    'a list of selectors',
    'h1,p{margin:0}',
    '<h1>a</h1><p>b</p>',
    '<h1 style="margin: 0;">a</h1><p style="margin: 0;">b</p>',
  ],
  [
    'an element inside another',
    'h1 a{color:red}',
    '<h1>x<i><a>a</a></i></h1><a>b</a>',
    '<h1>x<i><a style="color: red;">a</a></i></h1><a>b</a>',
  ],
  [
    'an element inside a class',
    '.n a{color:red}a{color:blue}',
    '<p class="n"><a>a</a></p>',
    '<p class="n"><a style="color: red;">a</a></p>',
  ],
  [
    'declarations of several rules, the winners last',
    'p{margin:0;color:red}.a{margin:1px}',
    '<p class="a">a</p>',
    '<p class="a" style="color: red; margin: 1px;">a</p>',
  ],
  [
    'a value with colons and quotes',
    "p{background:url(https://a.example/);font-family:'A B',serif}",
    '<p>a</p>',
    '<p style="background: url(https://a.example/); font-family: \'A B\',serif;">a</p>',
  ],
  [
    'an element without an end tag, which is left at once',
    '.r p{margin:0}',
    '<img class="r"><p>a</p>',
    '<img class="r"><p>a</p>',
  ],
])('%s has its style', (_, sheet, page, styled) => {
  expect(withInlineStyles(page, sheet)).toBe(styled);
});

test('comments, titles and style sheets are left as they are, and so is text that looks like a tag', () => {
  const page =
    '<title>&lt;p></title><style>p{color:red}</style><!--[if mso]><p><![endif]--><b title="&lt;p> &quot;p&quot;">a</b>';
  expect(withInlineStyles(page, 'p{margin:0}')).toBe(page);
});

test.each(['p>a', 'p:hover', '.a.b', 'ul li a', 'p+p', '#a', '*'])(
  'the selector %s, which it does not know, is a fault of ours',
  (selector) => {
    expect(() => withInlineStyles('<p>a</p>', `${selector}{margin:0}`)).toThrow('Expected a selector');
  },
);
