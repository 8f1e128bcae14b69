/** The screens of an office, made of a call as the engine asks it and of a board with something in every column. */
import { compile } from '../../../engine/compile.ts';
import type { Board, JobCard, JobView, ShopDesk } from '../../../engine/desk/index.ts';
import { formPrompt } from '../../../engine/form.ts';
import { SHELF } from '../../../flows/index.ts';
import { Conversation } from '../../people.ts';
import { NOW } from './prompts.ts';

export const CALL = 'a-call';

/** The longest form, with an emergency over it. */
export function sampleCall(viewOf: (name: string) => JobView | null): JobView | null {
  const manual = SHELF.find(({ caller }) => caller);
  const view = viewOf('choose one');
  if (!manual || !view) return null;
  const c = new Conversation({ machine: compile(manual), assigned: [] });
  for (const line of ['none', 'A', '555 0100 200', 'B', 'gate', 'new', 'walk-in']) c.type(line, 'dana');
  c.send({ kind: 'command', client: 'x', name: 'alarm' }, 'dana');
  c.send({ kind: 'command', client: 'y', name: 'not here' }, 'dana');
  const form = formPrompt(c.standing, c.at);
  const callouts = [{ level: 'danger' as const, text: 'Emergency. Tell the caller: get away from it. 911.' }];
  return { ...view, job: CALL, title: 'Brook Terrace 7', prompt: c.prompt(), form: form && { ...form, callouts } };
}

const STATES = ['taking', 'under-way', 'under-way', 'under-way', 'held', 'finished', 'signed', 'emergency'] as const;
const card = (state: JobCard['state'], i: number): JobCard => ({
  job: `job-${i}`,
  title: 'Brook Terrace 7: The outdoor unit hums and nothing turns',
  state,
  where: 'Prove the meter, prove it dead, prove the meter again.',
  assigned: i > 1 ? ['jo'] : [],
  verdict: state === 'finished' ? 'The repair is proven' : null,
  updated: NOW,
  isolation: 'Outdoor unit: ENERGIZED OR NOT PROVED',
  until: null,
  training: i === 2,
  opened: NOW,
  begun: i > 2,
  urgency:
    i % 2 === 1 ? { level: 'now', why: 'Indoors 96\u2009°F at 65\u2009% feels like 121\u2009°F: danger.' } : null,
  certified: i === 1,
  causes: i === 1 ? ['Run capacitor', 'Refrigerant'] : [],
  load: i === 1 ? ['Run capacitor: 30 to 60\u2009µF with 5\u2009µF, 440\u2009VAC, common range.'] : [],
  alarm: null,
});
export const sampleBoard = (): Board => ({
  jobs: STATES.map(card),
  crew: [
    { id: 'jo', name: 'Jo Vale', certified: true, available: false, on: 'job-3', day: ['job-2', 'job-3'] },
    { id: 'al', name: 'Al Brook', certified: false, available: true, on: null, day: [] },
  ],
  low: [{ truck: 'Van 1', item: 'run 40+5\u2009µF 440\u2009V, Drawer A', left: 1, low: 2 }],
  now: NOW,
});

export const sampleShop: ShopDesk = {
  devices: async () => [],
  endDevice: async () => undefined,
  saveUnits: async () => undefined,
  look: async () => ({
    people: [
      { id: 'jo', name: 'Jo Vale', initials: 'JV', roles: ['technician'], certified: true, active: true, meter: null },
      { id: 'al', name: 'Al Brook', initials: 'AB', roles: ['owner', 'senior'], certified: false, active: false },
    ],
    trucks: [
      {
        id: 't1',
        name: 'Van 1',
        version: 1,
        items: [
          {
            ...{ id: 'a', name: 'Drawer A', kind: 'run', sections: ['40', '5'], volts: '440', range: null },
            ...{ protection: null, life: null, count: 2, low: 1 },
          },
        ],
      },
    ],
    settings: { hertz: '60', rule: 'doubt', emergencyNumber: '911', tagWithExtraMeasure: true },
    mine: true,
  }),
  savePerson: async () => undefined,
  link: async () => '/sign-in/x',
  revoke: async () => 0,
  saveSettings: async () => undefined,
  saveTruck: async () => undefined,
};
