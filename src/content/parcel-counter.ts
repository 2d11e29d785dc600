/** Counts parcels that are alike, in memory that depends on how many differ and not on how many there are. */

import { itemAt } from '../text/item-at.ts';
import { PARCEL_STATES, type ParcelCount, type ParcelState } from './parcel-count.ts';
import { seenParcels } from './seen-parcels.ts';

/** Different carriers, or regions, that are told apart; more are names of something else. */
export const MOST_NAMES = 60;
/** Lines kept of parcels on their way that are alike. */
const MOST_LINES = 10;

/** How far along a parcel is: where a list names it twice, what is further along holds. */
const along = (state: ParcelState): number => (state === 'toLeave' ? 0 : state === 'travelling' ? 1 : 2);

/** The names of one column by number, 0 for none. */
const nameNumbers = () => {
  const numbers = new Map([['', 0]]);
  return {
    /** 0 for a name that is one too many. */
    of: (name: string): number => {
      const known = numbers.get(name);
      if (known !== undefined) return known;
      if (numbers.size > MOST_NAMES) return 0;
      numbers.set(name, numbers.size);
      return numbers.size - 1;
    },
  };
};

/** One parcel as it is counted. */
interface CountedParcel {
  readonly shipped: number;
  /** 0 to 511. */
  readonly days: number;
  readonly state: ParcelState;
  readonly carrier: string;
  readonly region: string;
  /** Its number, empty where the file has none: then it is not known again. */
  readonly parcel: string;
  readonly line: number;
}

type Cell = { -readonly [K in keyof ParcelCount]: ParcelCount[K] } & { lines: number[] };

/** Counts parcels that are alike, each number once. */
interface ParcelCounter {
  /** False when the parcel was counted before. */
  readonly add: (parcel: CountedParcel) => boolean;
  readonly counts: () => readonly ParcelCount[];
  /** Columns with more different names than can be told apart. */
  readonly overNamed: ReadonlySet<'carrier' | 'region'>;
}

/** A counter that has counted nothing yet. */
export const parcelCounter = (): ParcelCounter => {
  const cells: Cell[] = [];
  const byKey = new Map<number, number>();
  const numbers = { carrier: nameNumbers(), region: nameNumbers() };
  const overNamed = new Set<'carrier' | 'region'>();
  const seen = seenParcels();

  const indexOf = (parcel: CountedParcel): number => {
    const { shipped, days, state } = parcel;
    const told = (kind: 'carrier' | 'region'): readonly [number, string] => {
      const number = numbers[kind].of(parcel[kind]);
      if (number === 0 && parcel[kind] !== '') overNamed.add(kind);
      return [number, number === 0 ? '' : parcel[kind]];
    };
    const [[c, carrier], [r, region]] = [told('carrier'), told('region')];
    // 512 days, 8 states, 64 names twice, and the dates of 9,000 years fit far below 2 ** 53.
    const key = (((shipped + 4_000_000) * 512 + days) * 8 + PARCEL_STATES.indexOf(state)) * 4096 + c * 64 + r;
    const known = byKey.get(key);
    if (known !== undefined) return known;
    byKey.set(key, cells.length);
    cells.push({ shipped, days, state, carrier, region, count: 0, lines: [] });
    return cells.length - 1;
  };

  return {
    add: (parcel) => {
      const index = indexOf(parcel);
      const cell = itemAt(cells, index);
      const before = parcel.parcel === '' ? undefined : seen.meet(parcel.parcel, parcel.line, index);
      const other = before && cells[before.note];
      if (before && other) {
        if (along(cell.state) <= along(other.state)) return false;
        other.count -= 1;
        other.lines = other.lines.filter((line) => line !== before.line);
        seen.renote(parcel.parcel, index);
      }
      cell.count += 1;
      if (cell.state === 'travelling' && cell.lines.length < MOST_LINES) cell.lines.push(parcel.line);
      return before === undefined;
    },
    counts: () => cells.filter(({ count }) => count > 0),
    overNamed,
  };
};
