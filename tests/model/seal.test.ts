import { describe, expect, test } from 'vitest';
import type { PublicInput } from '../../src/channels/channel.ts';
import { parseMarkdown } from '../../src/content/markdown.ts';
import type { Box, Cycle, Story } from '../../src/model/box.ts';
import { changedOn } from '../../src/model/calendar.ts';
import { isOpen, revealedAt, unsealed } from '../../src/model/seal.ts';
import { cycle, item, box as sampleBox, settings } from '../support/box.ts';

/** A story that leads to cycles, as linking leaves it. */
const leadingTo = (file: string, ...ids: readonly string[]): Story => {
  const tree = parseMarkdown(ids.map((id) => `[${id}](../${id}/cycle.md)`).join('\n\n'));
  tree.children.forEach((child, i) => {
    const link = child.type === 'paragraph' ? child.children[0] : undefined;
    const id = ids[i];
    if (link?.type === 'link' && id !== undefined) link.data = { target: { cycle: id } };
  });
  return { file, tree, digest: `digest of ${file}`, leadsTo: ids };
};
/** A story whose tree nobody may read. */
const unread = (file: string): Story => ({
  file,
  digest: `digest of ${file}`,
  leadsTo: ['2026-01'],
  get tree(): Story['tree'] {
    throw new Error(`Expected nobody to read the tree of ${file}`);
  },
});

const FEBRUARY = Date.UTC(2026, 1, 25);
const revealed = (month: number): Partial<Cycle> => ({
  id: `2026-0${month}`,
  month,
  reveal: Date.UTC(2026, month - 1, 20),
});
const plain = cycle({
  ...revealed(1),
  story: unread('1.md'),
  items: [item({ cycle: '2026-01', story: unread('1/a.md') })],
});
const leading = cycle({
  ...revealed(2),
  story: leadingTo('2.md', '2026-01'),
  items: [
    item({ cycle: '2026-02', story: leadingTo('2/a.md', '2026-03', '2026-01') }),
    item({ cycle: '2026-02', story: unread('2/b.md') }),
  ],
});
const sealed = cycle({ ...revealed(3), story: unread('3.md'), items: [] });
const box: Box = sampleBox({
  settings: settings({ story: unread('box.md') }),
  cycles: [plain, leading, sealed],
});

describe('what is unsealed', () => {
  const open = unsealed(box, FEBRUARY);
  const [first, second] = open.cycles;

  test('is the very same object where nothing in it changes, and its trees are not even read', () => {
    expect(open.settings).toBe(box.settings);
    expect(first).toBe(plain);
    expect(second).not.toBe(leading);
    expect(second?.story).toBe(leading.story);
    expect(second?.items[1]).toBe(leading.items[1]);
  });

  test('has another digest where its tree changes, one for each set of what was taken out', () => {
    const told = (...ids: readonly string[]): Story | undefined => {
      const story = leadingTo('2/a.md', ...ids);
      const given = cycle({ ...revealed(2), story });
      return unsealed({ ...box, cycles: [given, sealed, cycle({ ...revealed(4), items: [] })] }, FEBRUARY)
        .cycles[0]?.story;
    };
    const whole = 'digest of 2/a.md';
    const [none, one, other, both] = [
      told('2026-01'),
      told('2026-03'),
      told('2026-04'),
      told('2026-03', '2026-04'),
    ];
    expect(none?.digest).toBe(whole);
    expect(new Set([whole, ...[one, other, both].map((story) => story?.digest)]).size).toBe(4);
    expect(told('2026-03')?.digest).toBe(one?.digest);
    expect(second?.items[0]?.story.leadsTo).toEqual(['2026-01']);
    expect(JSON.stringify(second?.items[0]?.story.tree)).not.toContain('2026-03/');
  });

  test('of a story that does not say where it leads is read out of its tree', () => {
    const { leadsTo: _, digest: __, ...story } = leadingTo('2.md', '2026-03');
    const [only] = unsealed({ ...box, cycles: [cycle({ ...revealed(2), story }), sealed] }, FEBRUARY).cycles;
    expect(JSON.stringify(only?.story.tree)).not.toContain('target');
    expect(only?.story).not.toHaveProperty('digest');
  });

  test('knows the moment of each reveal, and nothing but what is unsealed is taken for public', () => {
    expect(open.cycles.map(revealedAt)).toEqual([Date.UTC(2026, 0, 20), FEBRUARY - 5 * 24 * 3600 * 1000]);
    // @ts-expect-error A whole box is no open one.
    const whole: PublicInput['box'] = box;
    // @ts-expect-error Nor is what looks like one.
    const alike: PublicInput['box'] = { ...box, cycles: open.cycles };
    // @ts-expect-error A cycle of a whole box may be sealed, and has no day on which it was revealed.
    const day = () => changedOn(plain, 'UTC');
    expect([whole.cycles, alike.cycles].map(({ length }) => length)).toEqual([3, 2]);
    expect(isOpen(plain, FEBRUARY) && changedOn(plain, 'UTC')).toBe('2026-01-20');
    expect(day).not.toThrow();
  });
});
