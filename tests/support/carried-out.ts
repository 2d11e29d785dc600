/** A channel's plan with every document made, as a build carries it out. */
import type { ChannelInput, ChannelResult, PlanningChannel } from '../../src/channels/channel.ts';
import type { Output } from '../../src/render/output.ts';

/** All files and findings of a channel for an input. */
export const carriedOut = async (
  { where, plan }: PlanningChannel,
  input: ChannelInput,
): Promise<ChannelResult> => {
  const { documents, pictures = [], diagnostics = [] } = plan(input);
  const made = await Promise.all(
    documents.map(async ({ path, make }) => {
      const { content, pictures: named = [], diagnostics: found = [] } = await make(input);
      const file: Output =
        typeof content === 'string' ? { where, path, text: content } : { where, path, bytes: content };
      return { outputs: [file, ...named], diagnostics: found };
    }),
  );
  return {
    outputs: [...made.flatMap(({ outputs }) => outputs), ...pictures],
    diagnostics: [...diagnostics, ...made.flatMap((one) => one.diagnostics)],
  };
};
