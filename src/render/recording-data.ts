/** The recording of a live in schema.org's words. */
import type { Clip, VideoObject } from 'schema-dts';
import type { PlainDate } from '../model/box.ts';
import { momentAddress } from '../model/chapters.ts';

/** A live that was recorded, as an article's graph tells it. */
export interface Recording {
  readonly name: string;
  /** Where it is seen. */
  readonly address: string;
  readonly recorded: PlainDate;
  readonly minutes?: number;
  /** Seconds from its start; `end` where it is known. */
  readonly chapters: readonly { readonly name: string; readonly start: number; readonly end?: number }[];
}

/**
 * The recording of a live. Its address is `url`, "URL of the item": `contentUrl` is "actual bytes of the media object" and
 * `embedUrl` "a URL pointing to a player", and a record says no more than where people watch. A live is there from the day
 * on which it is held, which is its `uploadDate`. A chapter's address is a media fragment, the one open form that there is.
 *
 * Name, thumbnail and day are all needed: they are the required properties of those who read it
 * (developers.google.com/search/docs/appearance/structured-data/video), and one that lacks any is reported to its owner as
 * broken. An article `mentions` it, because `video` is "an embedded video object".
 */
export const videoObject = ({
  id,
  recording: { name, address, recorded, minutes, chapters },
  thumbnail,
  publisher,
}: {
  readonly id: string;
  readonly recording: Recording;
  /** Absolute address. */
  readonly thumbnail: string;
  /** The id of who publishes it. */
  readonly publisher: string;
}) =>
  ({
    '@type': 'VideoObject' as const,
    '@id': id,
    name,
    url: address,
    thumbnailUrl: thumbnail,
    uploadDate: recorded,
    ...(minutes ? { duration: `PT${minutes}M` } : {}),
    publisher: { '@id': publisher },
    ...(chapters.length > 0
      ? {
          hasPart: chapters.map(
            (chapter): Clip => ({
              '@type': 'Clip',
              name: chapter.name,
              startOffset: chapter.start,
              ...(chapter.end === undefined ? {} : { endOffset: chapter.end }),
              url: momentAddress(address, chapter.start),
            }),
          ),
        }
      : {}),
  }) satisfies VideoObject;
