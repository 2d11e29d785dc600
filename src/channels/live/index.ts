/** The run sheet: a live reveal beat by beat, to print, to read and to be led by; and the recording's chapters. */
import type { PlanningChannel } from '../channel.ts';
import { planLive } from './plan.ts';

/** A run sheet for each cycle of a box that makes the live. */
export const runSheet: PlanningChannel<'backroom'> = { name: 'run-sheet', where: 'backroom', plan: planLive };
