/** The recorded jobs on the disk, and the key that signed them. */
import { readdirSync, readFileSync } from 'node:fs';

export const FOLDER = new URL('./jobs/', import.meta.url).pathname;
/** In every message of a test that a changed page or engine makes fail. */
export const HOW =
  'Pages or engine compute recorded jobs differently. Where that is meant and nothing is published yet: npm run record.';

export const keyOfRecording = (): string => readFileSync(`${FOLDER}key`, 'utf8').trim();
export const recordedNames = (): string[] =>
  readdirSync(FOLDER)
    .filter((name) => name.endsWith('.json'))
    .map((name) => name.slice(0, -'.json'.length));
export const recorded = (name: string): string => readFileSync(`${FOLDER}${name}.json`, 'utf8');
