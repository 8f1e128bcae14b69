/** Hours and minutes: UTC as the server draws it, then this device's own, in the same five characters. */
export function clockTime(at: string, local: boolean): string {
  if (!local) return at.slice(11, 16);
  const date = new Date(at);
  return `${two(date.getHours())}:${two(date.getMinutes())}`;
}
const two = (n: number): string => String(n).padStart(2, '0');
