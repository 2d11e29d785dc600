/** The back room's first page. It is planned last, because it names the files of all other channels. */
import type { ClosingChannel } from '../channel.ts';
import { planIndex } from './plan.ts';

/** The one page. */
export const backRoomIndex: ClosingChannel = { name: 'back-room-index', where: 'backroom', plan: planIndex };
