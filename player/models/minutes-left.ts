/** Minutes (with their fraction) still to wait; 0 when the time is over. */
export function minutesLeft(since: string, minutes: number, now: string): number {
  const passed = (Date.parse(now) - Date.parse(since)) / 60_000;
  return Math.max(0, minutes - passed);
}

/** `29:40`, minutes and seconds. */
export function countdownText(minutes: number): string {
  const seconds = Math.ceil(minutes * 60);
  return `${Math.floor(seconds / 60)}:${String(seconds % 60).padStart(2, '0')}`;
}
