import type { JSX } from 'preact';
import type { App } from '../../models/app.ts';
import { createClassResults } from '../../models/practice/class-results.ts';
import type { ClassRow } from '../../models/practice/class-row.ts';
import { Action } from '../../parts/action.tsx';
import { useKept } from '../use-kept.ts';

/** The results of a class, from the files that its trainees saved. */
export function ClassTable({ app }: { readonly app: App }): JSX.Element {
  const results = useKept(() => createClassResults(app.ports));
  const rows = results.rows.value;
  return (
    <section aria-labelledby="results-of-a-class">
      <h2 id="results-of-a-class">Results of a class</h2>
      <p class="hint">
        Each trainee saves a result at the end of the debrief. Take all the files in at once.
      </p>
      <p class="sheet-foot">
        <Action onAct={() => void results.takeIn()}>Take in result files</Action>
        {rows.length > 0 && <Action onAct={results.saveTable}>Save as a table</Action>}
      </p>
      <p role="status" class="said">
        {results.said.value}
      </p>
      {rows.length > 0 && <Rows rows={rows} />}
    </section>
  );
}

function Rows({ rows }: { readonly rows: readonly ClassRow[] }): JSX.Element {
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls sideways must be reached by keyboard
    <div class="table" tabIndex={0}>
      <table class="figures-table class-table">
        <thead>
          <tr>
            <th scope="col">Name</th>
            <th scope="col">Code</th>
            <th scope="col">Found</th>
            <th scope="col">Right at first</th>
            <th scope="col">Minutes</th>
            <th scope="col">Hints</th>
            <th scope="col">Warnings passed over</th>
            <th scope="col">Harm</th>
          </tr>
        </thead>
        <tbody>
          {rows.map((row, index) => (
            <tr key={index}>
              <th scope="row">{row.name === '' ? 'no name' : row.name}</th>
              <td>{row.code}</td>
              <td>{row.found ? 'yes' : 'no'}</td>
              <td>{row.rightAtFirst ? 'yes' : 'no'}</td>
              <td>{row.minutes}</td>
              <td>{row.hints}</td>
              <td>{row.passed}</td>
              <td>{row.harm}</td>
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}
