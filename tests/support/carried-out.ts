/** A channel's plan with every document made, as a build makes it: each fragment once. */
import type {
  ChannelInput,
  ChannelPlan,
  PlannedDocument,
  PlannedFragment,
  Tools,
} from '../../src/channels/channel.ts';
import type { Diagnostic } from '../../src/diagnostics/diagnostic.ts';
import type { PictureOutput, Where } from '../../src/render/output.ts';

/** A file of text. */
export interface TextOutput {
  readonly where: Where;
  readonly path: string;
  readonly text: string;
}

/** A file that a channel gives: text, bytes, or a picture that has yet to be made. */
export type Output =
  | TextOutput
  | { readonly where: Where; readonly path: string; readonly bytes: Uint8Array }
  | PictureOutput;

/** Files with what was found while they were made. */
export interface ChannelResult {
  readonly outputs: readonly Output[];
  readonly diagnostics: readonly Diagnostic[];
}

/** A document or a fragment with its content. */
export interface MadeOne {
  readonly planned: PlannedDocument | PlannedFragment;
  readonly content: string | Uint8Array;
  readonly result: ChannelResult;
}

/** Everything that a plan makes, fragments first met first. */
export const madeOf = async (plan: ChannelPlan, tools: Tools): Promise<readonly MadeOne[]> => {
  const made = new Map<PlannedDocument | PlannedFragment, Promise<MadeOne>>();
  const makeOne = async (planned: PlannedDocument | PlannedFragment): Promise<MadeOne> => {
    const parts = await Promise.all((planned.of ?? []).map(madeOnce));
    const {
      content,
      pictures = [],
      diagnostics = [],
    } = await planned.make(
      tools,
      parts.map((part) => String(part.content)),
    );
    const path = 'path' in planned ? planned.path : planned.pathOf?.(String(content));
    const file: readonly Output[] =
      path === undefined
        ? []
        : typeof content === 'string'
          ? [{ where: 'site', path, text: content }]
          : [{ where: 'site', path, bytes: content }];
    return { planned, content, result: { outputs: [...file, ...pictures], diagnostics } };
  };
  const madeOnce = (planned: PlannedDocument | PlannedFragment): Promise<MadeOne> => {
    const making = made.get(planned) ?? makeOne(planned);
    made.set(planned, making);
    return making;
  };
  await Promise.all(plan.documents.map(madeOnce));
  return Promise.all(made.values());
};

/** A channel of either folder, or a closing one: the compiler sees to it that it is given what its kind may know. */
interface Carried<Input extends ChannelInput> {
  readonly where: Where;
  readonly plan: (input: Input) => ChannelPlan;
}

/** What a channel gives for an input: its files, the pictures they name, and all findings. */
export const carriedOut = async <Input extends ChannelInput>(
  channel: Carried<Input>,
  input: Input,
): Promise<ChannelResult> => {
  const plan = channel.plan(input);
  const made = await madeOf(plan, input);
  return {
    outputs: [
      ...made
        .flatMap(({ result }) => result.outputs)
        // A picture says itself which folder it is of.
        .map((output): Output => ('picture' in output ? output : { ...output, where: channel.where })),
      ...(plan.pictures ?? []),
    ],
    diagnostics: [...(plan.diagnostics ?? []), ...made.flatMap(({ result }) => result.diagnostics)],
  };
};
