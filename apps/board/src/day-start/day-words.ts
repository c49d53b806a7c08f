/** When the day of this machine began: '08:12 today', or with its date where the page was open overnight. */
export function sinceWords(at: Date, now: Date): string {
  const time = `${twoDigits(at.getHours())}:${twoDigits(at.getMinutes())}`;
  return isSameDay(at, now)
    ? `${time} today`
    : `${time} on ${at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long' })}`;
}

export function isSameDay(one: Date, other: Date): boolean {
  return one.toDateString() === other.toDateString();
}

const twoDigits = (figure: number) => String(figure).padStart(2, '0');

/** What the legend says of what has moved since. */
export function legendWords(since: string, holes: number, things: number): string {
  const parts = [counted(holes, 'hole'), counted(things, 'thing on the site', 'things on the site')].filter(Boolean);
  return parts.length === 0
    ? `Nothing lies elsewhere than at ${since}.`
    : `Dotted: as of ${since}. ${parts.join(' and ')} ${holes + things === 1 ? 'lies' : 'lie'} elsewhere now.`;
}

function counted(count: number, one: string, many = `${one}s`): string {
  if (count === 0) return '';
  return count === 1 ? `1 ${one}` : `${count} ${many}`;
}
