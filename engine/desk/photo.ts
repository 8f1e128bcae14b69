/** Photos of answers: which an entry names, and how one is kept. */
import type { Entry } from '../schema.ts';

/** Hashes of the photos that came with an answer or a change of one. */
export const photosIn = (entry: Entry): string[] =>
  entry.kind === 'answered' || entry.kind === 'amended'
    ? Object.values(entry.body.parts).flatMap((value) => (value.kind === 'photo' ? [value.hash] : []))
    : [];

/** Pixels that a photo may have: more than any phone takes, and far less than a small file can claim. */
const MOST_PIXELS = 50_000_000;
/** Pixels of the longer side as it is kept: a print on a label is still read. Ours. */
const KEPT_SIDE = 2560;
const QUALITY = 88;
/** What a file begins with: JPEG as in ITU-T T.81 annex B, PNG as in ISO/IEC 15948 5.2. A name or a type says nothing. */
const BEGINNINGS = [
  [0xff, 0xd8, 0xff],
  [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a],
];
/** Of all formats that the library reads, those two; the readers of all others are locked. */
const READERS = ['VipsForeignLoadJpeg', 'VipsForeignLoadPng'];

/**
 * The picture drawn anew as JPEG, the right way up: without place, time, camera or anything else that came beside it, and
 * without anything that stood behind its end. The same bytes give the same bytes. Null where they are no whole photo.
 */
export async function drawnAnew(bytes: Uint8Array): Promise<Uint8Array | null> {
  if (!BEGINNINGS.some((begin) => begin.every((byte, i) => bytes[i] === byte))) return null;
  const sharp = await library();
  try {
    return await sharp(bytes, { limitInputPixels: MOST_PIXELS, failOn: 'error', sequentialRead: true, pages: 1 })
      .autoOrient()
      .resize({ width: KEPT_SIDE, height: KEPT_SIDE, fit: 'inside', withoutEnlargement: true })
      .flatten({ background: '#ffffff' })
      .jpeg({ quality: QUALITY })
      .toBuffer();
  } catch {
    return null;
  }
}

type Library = typeof import('sharp')['default'];
let loaded: Promise<Library> | undefined;
/** Loaded by the first photo: most processes never see one. */
function library(): Promise<Library> {
  const ready =
    loaded ??
    import('sharp').then(({ default: sharp }) => {
      sharp.block({ operation: ['VipsForeignLoad'] });
      sharp.unblock({ operation: READERS });
      sharp.cache(false);
      sharp.concurrency(1);
      return sharp;
    });
  loaded = ready;
  return ready;
}
