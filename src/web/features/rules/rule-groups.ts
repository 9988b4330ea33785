// Which limits stand together on the page, in reading order.

import type { RuleName } from '../../../domain/rules/rule-profile.ts';

export const ruleGroups = {
  validity: ['intervalMonths', 'dueSoonDays', 'firstUseDays', 'driftPercent', 'chartsToSignal'],
  acceptance: [
    'accuracyPercent',
    'guardFactor',
    'repeatabilityPercent',
    'reversibilityPercent',
    'zeroPercent',
    'resolutionPercent',
    'minimumCycles',
    'minimumLevels',
    'validCertificates',
    'activeLoading',
    'fallingUse',
    'efficiencyLow',
    'efficiencyHigh',
    'cellWindowLow',
  ],
  gauge: ['dialWindowLow', 'dialWindowHigh', 'readableStepPercent'],
  strand: [
    'ceilingOfBreaking',
    'ceilingOfYield',
    'preloadFraction',
    'preTensionedWindowPercent',
    'postTensionedWindowPercent',
  ],
  device: ['snapshotCautionDays', 'snapshotStopDays'],
  events: [
    'eventRepair',
    'eventSeals',
    'eventMemberSwapped',
    'eventHose',
    'eventOverload',
    'eventDropped',
    'eventPointer',
    'eventStrandBreak',
  ],
} as const satisfies Readonly<Record<string, readonly RuleName[]>>;

export const groupNames = Object.keys(ruleGroups) as readonly (keyof typeof ruleGroups)[];
