import type { JSX } from 'preact';
import { minutesText } from '../../models/minutes-text.ts';
import type { Practise } from '../../models/practice/practise.ts';
import { placeOfRoute } from '../../models/route.ts';
import { dayText } from '../record/day-text.ts';

/** Drills that wait to be gone on with; nothing where there are none. */
export function UnfinishedList({ practise }: { readonly practise: Practise }): JSX.Element | null {
  const drills = practise.unfinished.value;
  if (drills.length === 0) return null;
  return (
    <section aria-labelledby="unfinished">
      <h2 id="unfinished">Still on the bench</h2>
      <ul class="cards">
        {drills.map(({ code, title, minutes, at }) => (
          <li key={code} class="card drill-card">
            <div>
              <a class="card-link" href={`#${placeOfRoute({ screen: 'drill', code })}`}>
                {title}
              </a>
              <p class="card-state">
                {minutesText(minutes)} spent<span class="dot-before">{dayText(at)}</span>
              </p>
            </div>
            <button type="button" class="action action-quiet drill-away" onClick={() => practise.drop(code)}>
              <span>
                Put away<span class="unseen"> {title}</span>
              </span>
            </button>
          </li>
        ))}
      </ul>
    </section>
  );
}
