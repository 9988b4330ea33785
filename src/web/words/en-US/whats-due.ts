// Words of the list of what falls due. American English.

const days = (count: number): string => (count === 1 ? '1 day' : `${count} days`);

export const whatsDue = {
  title: "What's due",
  asOf: (day: string) => `As of ${day}`,
  counted: (pairs: number, within: number | null) => {
    const what = pairs === 1 ? '1 pair' : `${pairs} pairs`;
    return within === null ? `${what} in use` : `${what} due within ${days(within)}, overdue or without a calibration`;
  },
  within: 'Due within',
  ofDays: (count: number) => days(count),
  everything: 'All pairs',
  otherDays: 'Or within, days',
  show: 'Show',
  daysBad: (given: string) => `"${given}" is not a whole number of days between 0 and 9999.`,
  groupBy: 'Group by',
  byDate: 'Date',
  byStanding: 'Standing',
  csv: 'This list as CSV',
  noDate: 'Without a valid calibration',
  past: 'Past the due day',
  thisWeek: 'In the next 7 days',
  inDays: (count: number) => `Within ${days(count)}`,
  later: 'Later',
  due: (day: string) => `due ${day}`,
  never: 'not calibrated yet',
  left: (count: number) => {
    if (count < 0) return `${days(-count)} ago`;
    return count === 0 ? 'today' : `in ${days(count)}`;
  },
  waiting: (count: number) =>
    count === 1 ? '1 calibration waits for a decision' : `${count} calibrations wait for a decision`,
  parts: (jack: string, gauge: string) => `${jack} with ${gauge}`,
  noneDue: (within: number) => `Nothing falls due within ${days(within)}.`,
  nonePairs: 'There is no pair in use yet.',
  formPair: 'Register parts and form a pair',
  showAll: 'Show all pairs',
} as const;
