/** Who goes to a call, chosen from its card in a chat: in the order of the board, with the reason; told there by its thread. */
import { inOrder, whyThere } from '../../who-goes.ts';
import { may } from '../rights.ts';
import type { Desk, Turn } from '../types.ts';

export interface WhoGoes {
  readonly title: string;
  /** Somebody has it already: it changes hands, and the next one accepts. */
  readonly hands: boolean;
  /** The one who fits best first. */
  readonly who: readonly { readonly id: string; readonly words: string }[];
}
export interface Giving {
  whoGoes(by: string, job: string): Promise<WhoGoes>;
  give(by: string, job: string, to: string, client: string): Promise<Turn>;
}
const NOBODY = { own: false, holder: false, gate: false, reason: false, participates: false };

export function createGiving(desk: Desk): Giving {
  const assigns = async (by: string): Promise<boolean> => may((await desk.person(by))?.roles ?? [], 'assign', NOBODY);
  return {
    async whoGoes(by, job) {
      const { title } = await desk.crewView(job);
      // Whoever holds a call may hand it over without seeing the board.
      if (!(await assigns(by))) {
        const crew = (await desk.people()).filter(({ id, active, roles }) => active && id !== by && technical(roles));
        return { title, hands: true, who: crew.map(({ id, name }) => ({ id, words: name })) };
      }
      const { jobs, crew } = await desk.dispatch.board(by);
      const card = jobs.find((one) => one.job === job);
      const assigned = card?.assigned ?? [];
      const others = inOrder({ certified: card?.certified ?? false }, crew).filter(({ id }) => !assigned.includes(id));
      const words = others.map((line) => `${line.name}: ${whyThere({ certified: card?.certified ?? false }, line)}`);
      return { title, hands: assigned.length > 0, who: others.map(({ id }, n) => ({ id, words: words[n] ?? id })) };
    },
    give: async (by, job, to, client) =>
      (await assigns(by))
        ? desk.dispatch.assign(by, job, to, client)
        : desk.reply(by, job, { kind: 'command', client, name: 'hand over', text: to }),
  };
}
const technical = (roles: readonly string[]): boolean => roles.some((role) => role !== 'dispatcher');
