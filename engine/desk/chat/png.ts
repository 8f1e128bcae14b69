/** A picture as PNG, for chats that show no SVG: the same drawing, ink on card, in our own face. */
import { createRequire } from 'node:module';
import { renderAsync } from '@resvg/resvg-js';

const require = createRequire(import.meta.url);
const FONTS = ['400Regular/AtkinsonHyperlegible_400Regular.ttf', '700Bold/AtkinsonHyperlegible_700Bold.ttf'].map(
  (file) => require.resolve(`@expo-google-fonts/atkinson-hyperlegible/${file}`),
);
const CARD = '#fbf6ea';
const WIDTH = 960;

export const toPng = async (svg: string): Promise<Uint8Array> => {
  const drawn = await renderAsync(svg, {
    background: CARD,
    fitTo: { mode: 'width', value: WIDTH },
    font: { fontFiles: FONTS, loadSystemFonts: false, defaultFontFamily: 'Atkinson Hyperlegible' },
  });
  return drawn.asPng();
};
