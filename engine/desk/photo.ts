/** Photos of answers: which an entry names, and a JPEG without what a camera writes beside the picture. */
import type { Entry } from '../schema.ts';

/** Hashes of the photos that came with an answer or a change of one. */
export const photosIn = (entry: Entry): string[] =>
  entry.kind === 'answered' || entry.kind === 'amended'
    ? Object.values(entry.body.parts).flatMap((value) => (value.kind === 'photo' ? [value.hash] : []))
    : [];

const [MARK, START, END, SCAN] = [0xff, 0xd8, 0xd9, 0xda];
/** APP1 to APP15 hold Exif, XMP and makers' notes, COM a comment. APP0 and APP14 say how colours are to be read. */
const isMetadata = (marker: number): boolean =>
  (marker >= 0xe1 && marker <= 0xef && marker !== 0xee) || marker === 0xfe;
/** Markers inside scan data: a stuffed byte and restarts. */
const isInScan = (marker: number): boolean => marker === 0x00 || (marker >= 0xd0 && marker <= 0xd7);

/**
 * The same picture without its metadata, and without anything behind its end; null where the bytes are no whole JPEG.
 * Segments as in ITU-T T.81, annex B: FF, a marker, two bytes of length that count themselves.
 */
export function plainJpeg(bytes: Uint8Array): Uint8Array | null {
  if (bytes[0] !== MARK || bytes[1] !== START) return null;
  const kept: Uint8Array[] = [bytes.subarray(0, 2)];
  let [at, pictured] = [2, false];
  while (at + 1 < bytes.length) {
    if (bytes[at] !== MARK) return null;
    const marker = bytes[at + 1] ?? 0;
    // Fill bytes may stand before a marker.
    if (marker === MARK) {
      at += 1;
      continue;
    }
    if (marker === END) return pictured ? joined([...kept, bytes.subarray(at, at + 2)]) : null;
    const end = at + 2 + (((bytes[at + 2] ?? 0) << 8) | (bytes[at + 3] ?? 0));
    if (end < at + 4 || end > bytes.length) return null;
    const next = marker === SCAN ? afterScan(bytes, end) : end;
    if (!isMetadata(marker)) kept.push(bytes.subarray(at, next));
    pictured ||= marker === SCAN;
    at = next;
  }
  return null;
}

function afterScan(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at + 1 < bytes.length && !(bytes[at] === MARK && !isInScan(bytes[at + 1] ?? 0))) at += 1;
  return at;
}

function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const out = new Uint8Array(pieces.reduce((sum, piece) => sum + piece.length, 0));
  let at = 0;
  for (const piece of pieces) {
    out.set(piece, at);
    at += piece.length;
  }
  return out;
}
