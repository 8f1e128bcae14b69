import { act } from '../../engine/vocabulary.ts';

/** Probes for a live sitting are placed dead: hands are in that cabinet, so it is locked and proved before. */
export const probesPlaced = <const T extends string, const U extends string>(where: string, next: T, cant: U) =>
  act<T | U>('rewire', {
    sitting: true,
    powers: ['done'],
    say: `Locked and proved dead: place the probes ${where}. The cover is off only as far as needed.`,
    body: [
      'Clips or probes that hold by themselves, rated for the line. Leads led out, no hand stays inside.',
      'A door switch is put back on by its own panel, never taped: with the door off nothing reads.',
      'Then people clear, lock off, power on.',
    ],
    why: 'What is placed dead needs no hand beside a live part.',
    yes: 'Placed, hands out',
    words: ['placed', 'probes placed', 'probes on', 'placed hands out'],
    cant: { label: 'They can’t be placed', words: ['cant be placed', 'cannot be placed', 'no clips'], to: cant },
    next,
  });
