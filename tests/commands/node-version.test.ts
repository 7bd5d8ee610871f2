import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { nodeIsTooOld } from '../../src/node-version.ts';

const { engines } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'));

test.each(['18.20.4', '20.18.3', '20.9.0', '16.0.0'])('Node %s is told what is needed', (version) => {
  const said = nodeIsTooOld(version);
  expect(said).toContain(version);
  expect(said).toContain(`Node ${engines.node.replace('>=', '')} or newer`);
});

test.each(['20.19.0', '20.20.2', '22.0.0', '24.1.0'])('Node %s runs', (version) => {
  expect(nodeIsTooOld(version)).toBeNull();
});
