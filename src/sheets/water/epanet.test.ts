import { Project, Workspace } from 'epanet-js';
import { describe, expect, it } from 'vitest';
import { swameeJainFactor } from './friction-factor.ts';
import { pipeLoss } from './pipe-loss.ts';
import { pipeVelocity } from './pipe-velocity.ts';

/** The engine takes 32.2 ft/s2, and a viscosity below 1e-3 as m2/s. */
const engineGravity = 32.2 * 0.3048;
const viscosity = 1.3063e-6;

const workspace = new Workspace();
await workspace.loadModule();

/** Head, m, that the engine loses along one pipe from a reservoir to a demand. */
const engineLoss = (
  flow: number,
  bore: number,
  length: number,
  roughness: number,
  fittings: number,
): number => {
  const inp = `[JUNCTIONS]
j 0 ${flow * 1000}
[RESERVOIRS]
r 1000
[PIPES]
p r j ${length} ${bore * 1000} ${roughness * 1000} ${fittings}
[OPTIONS]
Units LPS
Headloss D-W
Viscosity ${viscosity}
Accuracy 1e-8
Trials 200
[END]
`;
  const project = new Project(workspace);
  workspace.writeFile('net.inp', inp);
  project.open('net.inp', 'report.rpt', 'out.bin');
  project.openH();
  project.initH(11);
  project.runH();
  const head = project.getNodeValue(project.getNodeIndex('j'), 10);
  project.close();
  return 1000 - head;
};

describe.each([
  ['hook-up', 2.5 / 3600, 0.0273, 18, 0.00015, 9.8],
  ['long hose', 0.0009, 0.0254, 12, 0.00001, 2],
  ['wide run', 0.0012, 0.0508, 25, 0.000015, 6],
  ['in the transition', 0.00006, 0.02, 30, 0.000045, 0],
  ['laminar', 0.00002, 0.02, 50, 0.000045, 0],
])('%s', (_, flow, bore, length, roughness, fittings) => {
  const lost = engineLoss(flow, bore, length, roughness, fittings);
  const v = pipeVelocity(flow, bore);
  const re = (v * bore) / viscosity;

  it('the EPANET engine loses what Swamee-Jain gives, within 0.05 %', () => {
    const f = swameeJainFactor(re, roughness / bore);
    const head = (((f * length) / bore + fittings) * v * v) / (2 * engineGravity);
    expect(Math.abs(lost / head - 1)).toBeLessThan(5e-4);
  });

  it('the EPANET engine loses what Colebrook-White gives, within 3.5 %', () => {
    const head =
      pipeLoss(flow, bore, length, roughness, fittings, 1000, 1000 * viscosity) / (1000 * engineGravity);
    expect(Math.abs(lost / head - 1)).toBeLessThan(0.035);
  });
});
