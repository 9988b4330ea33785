// The order in which the crew finds a strand.

import { expect, test } from 'vitest';
import { listStrands } from '../../../../src/service/list-strands.ts';
import { orderStrands } from '../../../../src/web/features/set-the-gauge/order-strands.ts';
import { emptyPlantAtWork } from '../../../plant-at-work.ts';

const { plant } = await emptyPlantAtWork();
const designations = (strands: Parameters<typeof orderStrands>[0]) => strands.map(({ designation }) => designation);

test('is grade 270 before 250, of each the common sizes first, then as in the table', () => {
  const ofAstm = listStrands(plant).strands.filter(({ standard }) => standard === 'ASTM A416');
  expect(designations(orderStrands(ofAstm))).toEqual([
    '1/2 in 270',
    '0.6 in 270',
    '3/8 in 270',
    '7/16 in 270',
    '1/2 in special 270',
    '9/16 in 270',
    '0.62 in 270',
    '0.7 in 270',
    '1/2 in 250',
    '0.6 in 250',
    '3/8 in 250',
    '7/16 in 250',
  ]);
});

test('puts the strands of standards in SI alone after those, as in the table', () => {
  const { strands } = listStrands(plant);
  const ofOthers = strands.filter(({ standard }) => standard !== 'ASTM A416');
  expect(ofOthers.length).toBeGreaterThan(0);
  expect(designations(orderStrands(strands)).slice(-ofOthers.length)).toEqual(designations(ofOthers));
});

test('puts a strand without a grade in its name last', () => {
  const [any] = listStrands(plant).strands;
  if (any === undefined) throw new Error('The strand table is empty.');
  const odd = { ...any, designation: '15.2 mm, mill certificate' };
  expect(designations(orderStrands([odd, any]))).toEqual([any.designation, odd.designation]);
});
