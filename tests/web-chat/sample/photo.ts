/** A photo as a camera writes it: a large JPEG with Exif data that says where it was taken. */
import type { Page } from 'playwright-core';

export async function cameraPhoto(page: Page, width: number, height: number): Promise<Buffer> {
  const plain = await page.evaluate(
    async ([w, h]) => {
      const canvas = new OffscreenCanvas(w, h);
      const ink = canvas.getContext('2d');
      if (!ink) throw new Error('no canvas');
      for (let i = 0; i < 400; i++) {
        ink.fillStyle = `hsl(${i * 37} 60% ${20 + (i % 60)}%)`;
        ink.fillRect((i * 131) % w, (i * 71) % h, 90, 60);
      }
      const reader = new FileReader();
      reader.readAsDataURL(await canvas.convertToBlob({ type: 'image/jpeg', quality: 0.95 }));
      await new Promise((done) => reader.addEventListener('load', done));
      return String(reader.result).split(',')[1] ?? '';
    },
    [width, height] as const,
  );
  const exif = Buffer.from('Exif\0\0II*\0\b\0\0\0\0\0 GPS 47.5 N 8.3 E, invented', 'latin1');
  const segment = Buffer.concat([Buffer.from([0xff, 0xe1, 0, exif.length + 2]), exif]);
  const bytes = Buffer.from(plain, 'base64');
  return Buffer.concat([bytes.subarray(0, 2), segment, bytes.subarray(2)]);
}

/** Width and height in pixels, from the frame header (SOF0 to SOF2) of a JPEG. */
export function sizeOf(jpeg: Buffer): [number, number] | null {
  for (let at = 2; at + 9 < jpeg.length; at += 2 + jpeg.readUInt16BE(at + 2)) {
    const marker = jpeg[at + 1] ?? 0;
    if (marker >= 0xc0 && marker <= 0xc2) return [jpeg.readUInt16BE(at + 7), jpeg.readUInt16BE(at + 5)];
  }
  return null;
}
