export interface PlainTableProps {
  readonly corner: string;
  readonly columns: readonly { readonly id: string; readonly head: string }[];
  readonly rows: readonly { readonly head: string; readonly cells: readonly string[] }[];
}

/** Head and body of a table of numbers: rows of what is measured, a column for each thing compared. */
export function PlainTable({ corner, columns, rows }: PlainTableProps) {
  return (
    <>
      <thead>
        <tr>
          <th scope="col">{corner}</th>
          {columns.map(({ id, head }) => (
            <th key={id} scope="col" class="number">
              {head}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ head, cells }) => (
          <tr key={head}>
            <th scope="row">{head}</th>
            {cells.map((cell, i) => (
              <td key={columns[i]!.id} class="number">
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </>
  );
}
