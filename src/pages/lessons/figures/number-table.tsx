export interface NumberTableProps {
  /** Heads of the columns; the first is that of the rows' names. */
  readonly head: readonly string[];
  readonly rows: readonly { readonly name: string; readonly cells: readonly string[] }[];
}

/** Head and body of a figure's table: a name and its numbers in each row. */
export function NumberTable({ head, rows }: NumberTableProps) {
  return (
    <>
      <thead>
        <tr>
          {head.map((text, place) => (
            <th key={place} scope="col" class={place === 0 ? undefined : 'number'}>
              {text}
            </th>
          ))}
        </tr>
      </thead>
      <tbody>
        {rows.map(({ name, cells }) => (
          <tr key={name}>
            <th scope="row">{name}</th>
            {cells.map((cell, place) => (
              <td key={place} class="number">
                {cell}
              </td>
            ))}
          </tr>
        ))}
      </tbody>
    </>
  );
}
