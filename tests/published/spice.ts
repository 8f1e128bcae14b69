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
