import type { BrowserContext } from 'playwright-core';

/** Pixels of a cell's side, and by how many of 255 steps its mean may differ: letters may, panels and places may not. */
const [CELL, STEPS] = [20, 32];

/**
 * How unlike two pictures are: the largest difference of a cell's mean brightness or colour, 1 being as much as is
 * allowed. Infinite where they are not of one size. The browser reads them itself.
 */
export async function unlike(context: BrowserContext, a: Buffer, b: Buffer): Promise<number> {
  const page = await context.newPage();
  try {
    const worst = await page.evaluate(
      async ([cell, ...files]) => {
        const cells = async (file: string) => {
          const bytes = Uint8Array.from(atob(file), (each) => each.charCodeAt(0));
          const image = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
          const [w, h] = [Math.ceil(image.width / cell), Math.ceil(image.height / cell)];
          const ink = new OffscreenCanvas(w, h).getContext('2d');
          if (!ink) throw new Error('no canvas');
          ink.imageSmoothingQuality = 'high';
          ink.drawImage(image, 0, 0, w, h);
          return { size: `${image.width}×${image.height}`, data: ink.getImageData(0, 0, w, h).data };
        };
        const [one, two] = [await cells(files[0] as string), await cells(files[1] as string)];
        if (one.size !== two.size) return Number.POSITIVE_INFINITY;
        return one.data.reduce((most, value, i) => Math.max(most, Math.abs(value - (two.data[i] ?? 0))), 0);
      },
      [CELL, a.toString('base64'), b.toString('base64')] as const,
    );
    return worst / STEPS;
  } finally {
    await page.close();
  }
}
