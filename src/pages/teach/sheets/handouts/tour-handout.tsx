import type { HandoutWords } from './handout-words.ts';

/** What to look at and to ask on a visit to a gin, and what to mind. */
export function TourHandout({ words: { own } }: { readonly words: HandoutWords }) {
  const { tour } = own;
  return (
    <>
      <p>{tour.lead}</p>
      <section class="handout-cautions">
        <h3>{tour.cautions}</h3>
        <ul>
          {tour.cautionLines.map((line) => (
            <li key={line}>{line}</li>
          ))}
        </ul>
      </section>
      <table class="handout-table handout-tour">
        <thead>
          <tr>
            <th scope="col">{tour.machine}</th>
            <th scope="col">{tour.look}</th>
            <th scope="col">{tour.ask}</th>
            <th scope="col">{tour.heard}</th>
          </tr>
        </thead>
        <tbody>
          {tour.rows.map(([machine, look, ask]) => (
            <tr key={machine}>
              <th scope="row">{machine}</th>
              <td>{look}</td>
              <td>{ask}</td>
              <td />
            </tr>
          ))}
        </tbody>
      </table>
      <h3>{tour.compare}</h3>
      <ul>
        {tour.compares.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
      <p class="handout-room">{tour.notes}</p>
      <p class="handout-note">{tour.practice}</p>
    </>
  );
}
