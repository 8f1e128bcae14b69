/** Danger in words before everything else; never shortened. */
import type { KnownBlock } from '@slack/types';
import type { Callout, Prompt } from '../../../engine/index.ts';
import { escaped, marked, parted } from './text.ts';

const SIGNAL: Readonly<Record<Callout['level'], string>> = {
  danger: ':octagonal_sign: *DANGER:*',
  warning: ':warning: *WARNING:*',
  caution: ':warning: *CAUTION:*',
  notice: ':information_source: *NOTICE:*',
};
export const calloutBlocks = ({ callouts }: Pick<Prompt, 'callouts'>): KnownBlock[] =>
  callouts.flatMap(({ level, text }) =>
    parted(text).map((piece) => ({ type: 'section' as const, text: marked(`${SIGNAL[level]} ${escaped(piece)}`) })),
  );
export const calloutWords = ({ callouts }: Pick<Prompt, 'callouts'>): string[] =>
  callouts.map(({ level, text }) => `${level.toUpperCase()}: ${text}`);
export const dangers = ({ callouts }: Pick<Prompt, 'callouts'>): string[] =>
  callouts.flatMap(({ level, text }) => (level === 'danger' ? [text] : []));
