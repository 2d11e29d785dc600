/** What a story leads to and shows: the records that its links mean, and its pictures. */
import { visit } from 'unist-util-visit';
import { remembered } from '../text/remembered.ts';
import type { Picture, Story } from './box.ts';
import type { Target } from './story.ts';

/** Both in the order of the text. A link whose record may not be shown yet has no target. */
interface StoryReferences {
  readonly targets: readonly Target[];
  readonly pictures: readonly Picture[];
}

const referencesOfTree = remembered((tree: Story['tree']): StoryReferences => {
  const targets: Target[] = [];
  const pictures: Picture[] = [];
  visit(tree, (node) => {
    if (node.type === 'link' && node.data?.target && !node.data.dropped) targets.push(node.data.target);
    else if (node.type === 'image' && node.data?.picture) pictures.push(node.data.picture);
  });
  return { targets, pictures };
});

/** The records and pictures that a story names. */
export const referencesIn = ({ tree }: Pick<Story, 'tree'>): StoryReferences => referencesOfTree(tree);
