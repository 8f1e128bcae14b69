/** A verdict with its evidence, as lines. */
import type { Conclusion, Finding } from '../../engine/index.ts';

const WHO: Readonly<Record<Conclusion['who'], string | null>> = {
  junior: null,
  senior: 'A senior confirms this.',
  certified: 'A certified person decides this.',
};

export function verdictLines(verdict: Conclusion): string[] {
  const who = WHO[verdict.who];
  // Findings of one judgement mostly share their source: it is named once.
  const sources = new Set(verdict.findings.flatMap(({ source }) => (source === null ? [] : [source])));
  return [
    `VERDICT: ${verdict.title}`,
    ...verdict.says.map((text) => `  ${text}`),
    ...verdict.findings.flatMap(findingLines),
    ...[...sources].map((source) => `  Source: ${source}`),
    ...verdict.next.map((text) => `  → ${text}`),
    ...(who === null ? [] : [`  ${who}`]),
  ];
}

function findingLines({ name, reading, limits, doubt, word, text }: Finding): string[] {
  const figures = [
    reading,
    ...(limits === null ? [] : [`limits ${limits}`]),
    ...(doubt === null ? [] : [`with the meter’s doubt ${doubt}`]),
  ];
  return [`  ${name}: ${word.toUpperCase()} · ${figures.join(' · ')}`, `    ${text}`];
}
