/** A photo that somebody sent, fetched with the bot's token. Without a right token the platform answers a web page, so what came is looked at. */
export interface SentFile {
  readonly url_private?: string | undefined;
  readonly size?: number | undefined;
}
/** Bytes and milliseconds; our settings. */
const LARGEST = 10 * 1024 * 1024;
const PATIENCE = 15_000;

/** The bytes, or why there are none, in words for whoever sent it. */
export async function fetchPhoto(
  file: SentFile,
  token: string,
  platform: typeof fetch,
  patience = PATIENCE,
): Promise<Uint8Array | string> {
  if ((file.size ?? 0) > LARGEST) return 'That photo is larger than 10 MB. Send a smaller one.';
  if (file.url_private === undefined) return 'The photo can’t be fetched. Send it again.';
  try {
    const answer = await platform(file.url_private, {
      headers: { authorization: `Bearer ${token}` },
      redirect: 'error',
      signal: AbortSignal.timeout(patience),
    });
    if (!answer.ok || !answer.body) return 'The photo can’t be fetched. Send it again.';
    if (!(answer.headers.get('content-type') ?? '').startsWith('image/')) return 'That is no photo. Send a JPEG.';
    const pieces: Uint8Array[] = [];
    let size = 0;
    for await (const piece of answer.body) {
      size += piece.byteLength;
      if (size > LARGEST) return 'That photo is larger than 10 MB. Send a smaller one.';
      pieces.push(piece);
    }
    return new Uint8Array(Buffer.concat(pieces));
  } catch {
    return 'The photo can’t be fetched. Send it again.';
  }
}
