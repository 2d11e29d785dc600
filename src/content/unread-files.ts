/** Every file of the content folder is read or named: what an owner wrote may not vanish because of how its file is called. */
import type { Diagnostic } from '../diagnostics/diagnostic.ts';
import { fold } from '../text/fold.ts';
import { ITEM_FILE, MONTH, PARCELS_FILE } from './paths.ts';

/** A file that stands in the content folder. */
export interface StandingFile {
  /** Relative to the folder, with forward slashes. */
  readonly path: string;
  /** A link to nothing, or something else that has no content. */
  readonly isBroken: boolean;
  /** A link that leads out of the content folder. */
  readonly leadsOut?: boolean;
  /** A text that is too long to be read. */
  readonly isTooBig?: boolean;
  /** Whether it is looked at as a photo: a record may name it wherever it lies. */
  readonly isPhoto: boolean;
  /** A filmed piece in a cycle that was read, and no record of it names this one. */
  readonly isUnnamedTake?: boolean;
}

/** Files that have a rule. */
const READ = [
  /^box\.md$/,
  /^searches\.csv$/,
  /^addresses\.csv$/,
  /^cycles\/[^/]+\/cycle\.md$/,
  ITEM_FILE,
  PARCELS_FILE,
  /^cycles\/[^/]+\/takes\/[^/]+\.(?:mp4|mov|m4v)$/i,
];

/**
 * What systems, editors and version control leave behind; from memory: Finder, Explorer, AppleDouble, Emacs, Vim,
 * office locks, copies before a change.
 */
const LEFT_BEHIND =
  /^(?:\.DS_Store|\.localized|Icon\r|(?:eh)?thumbs\.db|desktop\.ini|\._.*|\.#.*|#.*#|.*~|~\$.*|\.~lock\..*|.*\.(?:sw[a-p]|tmp|temp|bak|orig|rej|part|crdownload))$/i;

const isLeftBehind = (path: string): boolean =>
  path.split('/').some((name) => LEFT_BEHIND.test(name) || name === '__MACOSX');

/** Documents of word processors and the like: their text has to be copied out. */
const DOCUMENT = /\.(?:docx?|odt|rtf|pages|pdf|html?|xlsx?|ods|numbers|webarchive|eml)$/i;
/** Endings of texts that would be a record under another name. */
const TEXT = /(?:\.(?:md|mdx|mkd|mdown|markdown|txt|text|yaml|yml))+\s*$/i;
const FOLDERS = ['cycles', 'items', 'photos', 'takes'];
const FILES = ['box.md', 'cycle.md', 'searches.csv', 'addresses.csv', 'parcels.csv'];

const nameOf = (path: string): string => path.slice(path.lastIndexOf('/') + 1);
const folderOf = (path: string): string => path.slice(0, Math.max(0, path.lastIndexOf('/')));

/** A name as it is compared: "Items", "item" and "items " are one. */
const likeness = (name: string): string => fold(name).trim().replace(/s$/, '');

/** The folder or file that a name was meant for, where it is none of them as it stands. */
const meant = (name: string, names: readonly string[]): string | undefined =>
  names.find((one) => one !== name && likeness(one) === likeness(name));

/** The name that a record would have: `05.md` for `05.MD`, `05.md.txt`, `.05.md`, `05.docx` and `05`. */
const recordName = (name: string): string => {
  const bare = name.replace(/^\.+/, '').replace(TEXT, '').replace(DOCUMENT, '').trim();
  return `${bare || 'name'}.md`;
};

/** Whether a file's text would be a record if it stood elsewhere or had another name. */
const isRecordLike = (name: string): boolean =>
  TEXT.test(name) || DOCUMENT.test(name) || !/\.\w+$/.test(name);

type Found = Pick<Diagnostic, 'weight' | 'message' | 'fix'>;

const unread = (what: string, expected: string): string =>
  `Unexpected ${what}, expected ${expected}; it was not read`;

/** What is wrong with a file among a cycle's items, `rest` being its path from there. */
const amongItems = (rest: string): Found => {
  const name = nameOf(rest);
  if (rest.includes('/'))
    return {
      weight: 'must fix',
      message: unread(`folder \`${rest.slice(0, rest.indexOf('/'))}\` in items/`, 'the items’ files alone'),
      fix: isRecordLike(name) ? `Move ${name} to items/` : `Move ${name} out of items/`,
    };
  if (DOCUMENT.test(name))
    return {
      weight: 'must fix',
      message: unread(`document \`${name}\` in items/`, 'a text file that ends in .md'),
      fix: `Copy its text into a file ${recordName(name)}, and keep the document outside the content folder`,
    };
  if (isRecordLike(name))
    return {
      weight: 'must fix',
      message: unread(`file name \`${name}\` in items/`, `\`${recordName(name)}\``),
      fix: `Rename it to ${recordName(name)}, or keep it outside the content folder`,
    };
  return {
    weight: 'must fix',
    message: unread(`file \`${name}\` in items/`, 'the items’ .md files alone'),
    fix: 'Move pictures to photos/, and keep other files outside the content folder',
  };
};

/** What is wrong with a folder that has no rule, where it must have been meant for one that has. */
const misnamedFolder = (path: string): { readonly folder: string; readonly found: Found } | undefined => {
  const names = folderOf(path).split('/');
  for (const [depth, name] of names.entries()) {
    const folder = names.slice(0, depth + 1).join('/');
    const wanted = meant(name, FOLDERS);
    const isInPlace =
      depth === 0 ? wanted === 'cycles' : depth === 2 && names[0] === 'cycles' && wanted !== 'cycles';
    if (wanted !== undefined && isInPlace)
      return {
        folder,
        found: {
          weight: 'must fix',
          message: unread(`folder \`${name}\``, `\`${wanted}\``),
          fix: `Rename the folder to ${wanted}`,
        },
      };
    if (depth === 0 && MONTH.test(name))
      return {
        folder,
        found: {
          weight: 'must fix',
          message: unread(`month \`${name}\` beside box.md`, `\`cycles/${name}\``),
          fix: 'Move the folder into cycles/',
        },
      };
  }
  return undefined;
};

const ITEMS = /^cycles\/[^/]+\/items\//;
/** Items are numbered, and nothing else is. */
const NUMBERED = /^\.?\d+[-_. ].*/;

const elsewhere = (path: string): Found => {
  const name = nameOf(path);
  const wanted = meant(name, FILES) ?? FILES.find((one) => likeness(recordName(name)) === likeness(one));
  const others = FILES.filter((one) => one.endsWith('.csv')).map((one) => one.replace('.csv', ''));
  const list = others.find((one) => likeness(name.replace(/\.[^.]*$/, '')) === likeness(one));
  if (wanted !== undefined && wanted !== name)
    return {
      weight: 'look at',
      message: unread(`file name \`${name}\``, `\`${wanted}\``),
      fix: `Rename it to ${wanted}`,
    };
  if (list !== undefined)
    return {
      weight: 'look at',
      message: unread(`file name \`${name}\``, `\`${list}.csv\``),
      fix: `Save it as ${list}.csv: text with commas, semicolons or tabs between the columns`,
    };
  if (MONTH.test(name.replace(TEXT, '')))
    return {
      weight: 'must fix',
      message: unread(`file \`${name}\``, 'a folder of that month with a cycle.md'),
      fix: `Make it cycles/${name.replace(TEXT, '')}/cycle.md`,
    };
  if (/^cycles\/[^/]+\/[^/]+$/.test(path) && isRecordLike(name) && NUMBERED.test(name))
    return {
      weight: 'must fix',
      message: unread(`item \`${name}\` beside cycle.md`, `\`items/${recordName(name)}\``),
      fix: `Move it to items/${recordName(name)}`,
    };
  return {
    weight: 'look at',
    message: unread(`file \`${name}\``, 'box.md, cycle.md, an item’s .md in items/, a photo or a list'),
    fix: 'Move it to where it belongs, or keep it outside the content folder',
  };
};

const broken = (path: string): Found => ({
  weight: ITEMS.test(path) || READ.some((one) => one.test(path)) ? 'must fix' : 'look at',
  message: unread(`\`${nameOf(path)}\`, which is no file, or a link that leads to nothing`, 'a file'),
  fix: 'Put the file there, or take away what stands for it',
});

/** What lies elsewhere may be anybody's: it is neither read nor remembered. */
const outside = (path: string): Found => ({
  weight: 'must fix',
  message: unread(`link \`${nameOf(path)}\` that leads out of the content folder`, 'the file itself'),
  fix: 'Put the file or the folder itself there, or take the link away',
});

const TOO_BIG: Found = {
  weight: 'must fix',
  message: unread('text of many million letters', 'one that somebody wrote'),
  fix: 'Take out what was pasted by mistake, or keep the file outside the content folder',
};

/** Lists of a cycle that another one stands beside: the last in order of their names is read. */
const secondLists = (files: readonly StandingFile[]): ReadonlySet<string> => {
  const last = new Map<string, string>();
  const others = new Set<string>();
  for (const { path } of files) {
    const cycle = PARCELS_FILE.exec(path)?.[1];
    if (cycle === undefined) continue;
    const before = last.get(cycle);
    if (before !== undefined) others.add(before);
    last.set(cycle, path);
  }
  return others;
};

const secondList = (path: string): Found => ({
  weight: 'must fix',
  message: unread(`second list \`${nameOf(path)}\` in a cycle`, 'one'),
  fix: 'Put the rows of both into parcels.csv, or take one away',
});

const unnamedTake = (path: string): Found => ({
  weight: 'look at',
  message: unread(
    `filmed piece \`${nameOf(path)}\` that no record names`,
    '`take` in an item’s record or `takes` in cycle.md to name it',
  ),
  fix: `Write take: ${nameOf(path)} into the record of what it shows, or keep it outside the content folder`,
});

/**
 * A finding for each file that no rule reads, and one for each folder that no rule reads. Must fix where a record was
 * meant, because what an item says of allergens would be missing from the page; look at for the rest; nothing for what
 * systems and editors leave behind.
 */
export const unreadFindings = (files: readonly StandingFile[]): readonly Diagnostic[] => {
  const folders = new Set<string>();
  const seconds = secondLists(files);
  return files.flatMap(
    ({ path, isBroken, leadsOut, isTooBig, isPhoto, isUnnamedTake }): readonly Diagnostic[] => {
      if (isLeftBehind(path)) return [];
      const place = (file: string, found: Found): Diagnostic => ({
        rule: 'file-unread',
        location: { file, line: 1, column: 1 },
        ...found,
      });
      if (isBroken) return [place(path, broken(path))];
      if (leadsOut) return [place(path, outside(path))];
      if (isTooBig) return [place(path, TOO_BIG)];
      if (isUnnamedTake) return [place(path, unnamedTake(path))];
      if (seconds.has(path)) return [place(path, secondList(path))];
      if (isPhoto || READ.some((one) => one.test(path))) return [];
      // The folder has a finding of its own, and what is in it is not looked at one by one.
      const month = /^cycles\/([^/]+)\//.exec(path)?.[1];
      if (month !== undefined && !MONTH.test(month)) return [];
      const misnamed = misnamedFolder(path);
      if (misnamed) {
        if (folders.has(misnamed.folder)) return [];
        folders.add(misnamed.folder);
        return [place(misnamed.folder, misnamed.found)];
      }
      const rest = ITEMS.exec(path);
      return [place(path, rest ? amongItems(path.slice(rest[0].length)) : elsewhere(path))];
    },
  );
};
