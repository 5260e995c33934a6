import type { TwinRow } from './pictures/picture.ts';

/** The values in a picture, as a table. */
export function SeenTable({ rows }: { readonly rows: readonly TwinRow[] }) {
  if (rows.length === 0) return null;
  return (
    <table class="seen-table">
      <tbody>
        {rows.map(({ key, label, text }) => (
          <tr key={key} data-key={key}>
            <th scope="row">{label}</th>
            <td class="number">{text}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
