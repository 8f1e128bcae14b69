/** ngspice as an oracle: a circuit is written as its netlist, and the volts of its nodes come back. One engine per test file. */
import { Simulation } from 'eecircuit-engine';

let started: Promise<Simulation> | undefined;
const engine = (): Promise<Simulation> =>
  (started ??= (async () => {
    const simulation = new Simulation();
    await simulation.start();
    return simulation;
  })());

/** The volts at a node as [real, imaginary], at 60 Hz. */
type Phasor = readonly [number, number];
export type Volts = (node: string) => Phasor;

/** Solves a circuit at 60 Hz; node `0` is ground. Throws where a node is not in the circuit. */
export async function solveAc(lines: readonly string[]): Promise<Volts> {
  const simulation = await engine();
  simulation.setNetList(['circuit', ...lines, '.ac lin 1 60 60', '.end'].join('\n'));
  const result = await simulation.runSim();
  if (result.dataType !== 'complex') throw new Error('ngspice gave no phasors');
  const nodes = new Map(result.data.map((row) => [row.name, row.values[0]]));
  return (node) => {
    const found = nodes.get(`v(${node})`);
    if (!found) throw new Error(`no node ${node}`);
    return [found.real, found.img];
  };
}

/** Volts between two nodes without phase; `0` is ground. */
export function between(volts: Volts, one: string, other: string): number {
  const [a, b] = [one, other].map((node): Phasor => (node === '0' ? [0, 0] : volts(node)));
  return Math.hypot((a?.[0] ?? 0) - (b?.[0] ?? 0), (a?.[1] ?? 0) - (b?.[1] ?? 0));
}

/** Volts at a node at any time within the run. Times come back off any grid, so the two around it are joined by a line. */
export interface Decay {
  readonly voltsAt: (node: string, seconds: number) => number;
  /** When a falling node passes these volts. */
  readonly secondsTo: (node: string, volts: number) => number;
  /** The times that came back, to compare at without any joining. */
  readonly seconds: readonly number[];
  readonly volts: (node: string) => readonly number[];
}

/** Runs a circuit from its initial conditions; steps of at most `stepSeconds`. */
export async function solveDecay(lines: readonly string[], seconds: number, stepSeconds: number): Promise<Decay> {
  const simulation = await engine();
  const tran = `.tran ${stepSeconds} ${seconds} 0 ${stepSeconds} uic`;
  simulation.setNetList(['circuit', ...lines, tran, '.end'].join('\n'));
  const result = await simulation.runSim();
  if (result.dataType !== 'real') throw new Error('ngspice gave no volts over time');
  const rows = new Map(result.data.map((row) => [row.name, row.values]));
  const row = (name: string): readonly number[] => {
    const found = rows.get(name);
    if (!found) throw new Error(`no ${name}`);
    return found;
  };
  const times = row('time');
  const join = (xs: readonly number[], ys: readonly number[], i: number, x: number): number => {
    const [x0 = 0, x1 = 0, y0 = 0, y1 = 0] = [xs[i - 1], xs[i], ys[i - 1], ys[i]];
    return y0 + ((y1 - y0) * (x - x0)) / (x1 - x0);
  };
  const volts = (node: string): readonly number[] => row(`v(${node})`);
  return {
    seconds: times,
    volts,
    voltsAt: (node, at) =>
      join(
        times,
        volts(node),
        times.findIndex((t) => t >= at),
        at,
      ),
    secondsTo: (node, to) => {
      const of = volts(node);
      return join(
        of,
        times,
        of.findIndex((v) => v <= to),
        to,
      );
    },
  };
}
