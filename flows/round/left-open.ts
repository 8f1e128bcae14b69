/** What a round leaves open: nothing is condemned, nothing energised, a senior leads on. */
import { verdict } from '../../engine/vocabulary.ts';

export const insulationOpen = verdict({
  verdict: 'insulation-not-settled',
  title: 'The insulation reads low, and not in one state twice',
  says: ['Nothing is condemned, and nothing is energised.'],
  next: ['A senior repeats it: leads off, heater off, not cold.', 'It stays off.'],
  who: 'senior',
  judged: [],
  evidence: ['observation'],
  raises: 'verdict',
  then: '!raised',
});
export const contradicts = verdict({
  verdict: 'insulation-contradicts-ohms',
  title: 'Low in ohms, and the insulation test holds: undecided, no power',
  says: ['The compressor read low to ground at its own leads. One good test after it does not clear it.'],
  next: ['A senior reads both again: leads, plug and terminals clean and dry.', 'Nothing is energised until then.'],
  who: 'senior',
  judged: [],
  evidence: ['observation'],
  raises: 'verdict',
  then: '!raised',
});
export const fuseAlone = verdict({
  verdict: 'fuse-without-cause',
  title: 'A blown fuse without a cause found: one new fuse, once, with a senior’s word',
  says: ['No ground at meter voltage, and the insulation holds. A hot clip or age opens a fuse too.'],
  next: [
    'A senior decides about one fuse of the printed size, at most the MOP, and one controlled start.',
    'It stays off until then.',
  ],
  who: 'senior',
  judged: [],
  evidence: ['observation'],
  raises: 'verdict',
  then: '!raised',
});
export const chatters = verdict({
  verdict: 'chatters-while-cycling',
  title: 'It chatters where it cycles: the volts at its coil come first',
  says: ['Chatter welds contacts and breaks compressors.'],
  next: ['The lowest volts at pull-in, and R to C beside it, decide it. A senior leads on.', 'It stays off.'],
  who: 'senior',
  judged: [],
  evidence: ['observation'],
  raises: 'verdict',
  then: '!raised',
});
