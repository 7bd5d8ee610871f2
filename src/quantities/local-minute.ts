/**
 * A moment on the clock of a time zone ("2026-11-24T09:05").
 * @param moment UTC, `YYYY-MM-DDTHH:MM:SSZ`
 * @param timeZone IANA name
 */
export function localMinute(moment: string, timeZone: string): string {
  const parts = new Intl.DateTimeFormat('sv-SE', {
    timeZone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
    hour: '2-digit',
    minute: '2-digit',
  }).format(new Date(moment));
  return parts.replace(' ', 'T');
}
