// An instant as a person reads it: day and minute, in the plant's time zone where it is known, else in the device's.

/** Answers "2026-11-25 13:05" for a UTC instant; a time zone the browser does not know gives the device's own. */
export function writeMinute(instant: string, timeZone?: string): string {
  const options = {
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
    hourCycle: 'h23',
  } as const;
  const date = new Date(instant);
  const parts = formatterFor(timeZone, options).formatToParts(date);
  const part = (type: Intl.DateTimeFormatPartTypes): string =>
    parts.find((candidate) => candidate.type === type)?.value ?? '';
  return `${part('year')}-${part('month')}-${part('day')} ${part('hour')}:${part('minute')}`;
}

function formatterFor(timeZone: string | undefined, options: Intl.DateTimeFormatOptions): Intl.DateTimeFormat {
  try {
    return new Intl.DateTimeFormat('en-CA', timeZone === undefined ? options : { ...options, timeZone });
  } catch {
    return new Intl.DateTimeFormat('en-CA', options);
  }
}
