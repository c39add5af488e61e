/** Which screen is shown, and of what. */
export type Route =
  | { readonly screen: 'bench' }
  | { readonly screen: 'symptoms' }
  | { readonly screen: 'instruments' }
  | { readonly screen: 'opening'; readonly tree: string }
  | { readonly screen: 'job'; readonly id: string }
  | { readonly screen: 'record'; readonly id: string }
  | { readonly screen: 'practise' }
  | { readonly screen: 'drill'; readonly code: string }
  | { readonly screen: 'debrief'; readonly code: string }
  | { readonly screen: 'nowhere'; readonly place: string };

const decode = (text: string): string => {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
};

/** `/job/x7` → the job's screen. What stands behind `#` in the address. */
export function routeOf(place: string): Route {
  const [first = '', second, third, ...more] = place
    .replace(/^\/+|\/+$/g, '')
    .split('/')
    .map(decode);
  if (more.length > 0) return { screen: 'nowhere', place };
  if (first === '') return { screen: 'bench' };
  if (first === 'symptoms' && second === undefined) return { screen: 'symptoms' };
  if (first === 'instruments' && second === undefined) return { screen: 'instruments' };
  if (first === 'open' && second !== undefined && third === undefined)
    return { screen: 'opening', tree: second };
  if (first === 'job' && second !== undefined && third === undefined) return { screen: 'job', id: second };
  if (first === 'job' && second !== undefined && third === 'record') return { screen: 'record', id: second };
  if (first === 'practise') return practiceRoute(place, second, third);
  return { screen: 'nowhere', place };
}

function practiceRoute(place: string, code?: string, what?: string): Route {
  if (code === undefined) return { screen: 'practise' };
  if (what === undefined) return { screen: 'drill', code };
  return what === 'debrief' ? { screen: 'debrief', code } : { screen: 'nowhere', place };
}

/** A code in an address reads as it is read out: its colon stays one. */
const codeInPlace = (code: string): string => encodeURIComponent(code).replaceAll('%3A', ':');

/** The place of a route: the inverse of `routeOf`. */
export function placeOfRoute(route: Route): string {
  switch (route.screen) {
    case 'bench':
      return '/';
    case 'symptoms':
      return '/symptoms';
    case 'instruments':
      return '/instruments';
    case 'opening':
      return `/open/${encodeURIComponent(route.tree)}`;
    case 'job':
      return `/job/${encodeURIComponent(route.id)}`;
    case 'record':
      return `/job/${encodeURIComponent(route.id)}/record`;
    case 'practise':
      return '/practise';
    case 'drill':
      return `/practise/${codeInPlace(route.code)}`;
    case 'debrief':
      return `/practise/${codeInPlace(route.code)}/debrief`;
    case 'nowhere':
      return route.place;
  }
}
