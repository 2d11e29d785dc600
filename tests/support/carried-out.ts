/** A channel's plan, carried out: what a build would be given. */
import type { ChannelPlan, PrivateInput, PublicInput } from '../../src/channels/channel.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { PictureOutput } from '../../src/render/output.ts';

/** Every document of a plan by its path, with the pictures and findings that planning and making gave. */
export interface CarriedOut {
  readonly files: ReadonlyMap<string, string | Uint8Array>;
  readonly pictures: readonly PictureOutput[];
  readonly diagnostics: readonly Diagnostic[];
}

/** Plans, and makes every document of the plan. */
export const carriedOut = async <Input extends PublicInput | PrivateInput>(
  channel: { readonly plan: (input: Input) => ChannelPlan },
  input: Input,
): Promise<CarriedOut> => {
  const { documents, pictures = [], diagnostics = [] } = channel.plan(input);
  const made = await Promise.all(documents.map(async ({ path, make }) => ({ path, ...(await make(input)) })));
  return {
    files: new Map(made.map(({ path, content }) => [path, content])),
    pictures: [...pictures, ...made.flatMap((one) => one.pictures ?? [])],
    diagnostics: [...diagnostics, ...made.flatMap((one) => one.diagnostics ?? [])],
  };
};
