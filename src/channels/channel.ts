/** A way out: takes the box, gives files as data. One file a channel; they never import each other. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import type { Box, Moment } from '../model/box.ts';
import type { Output, Where } from '../render/output.ts';
import type { Templates } from '../render/templates.ts';

export interface ChannelInput {
  /**
   * For a public channel this holds unsealed cycles alone: what is sealed is not in the value, so no channel
   * can let it slip. A private channel is given the whole box.
   */
  readonly box: Box;
  readonly asOf: Moment;
  readonly templates: Templates;
}

export interface ChannelResult {
  readonly outputs: readonly Output[];
  readonly diagnostics: readonly Diagnostic[];
}

export interface Channel {
  /** The trade's word for what it makes; also the template's name where it has one. */
  readonly name: string;
  readonly where: Where;
  readonly make: (input: ChannelInput) => ChannelResult;
}
