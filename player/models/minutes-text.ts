/** `1 minute`, `30 minutes`. */
export const minutesText = (minutes: number): string => `${minutes} ${minutes === 1 ? 'minute' : 'minutes'}`;
