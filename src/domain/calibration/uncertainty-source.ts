// What the uncertainty of a force can come from. How large each is, is computed in uncertainty-budget.ts.

export const uncertaintySources = [
  'load-cell-certificate',
  'cell-indicator',
  'gauge-resolution',
  'scatter-and-fit',
  'reversibility',
  'temperature',
  'drift',
] as const;
export type UncertaintySource = (typeof uncertaintySources)[number];
