// Files of the maker's, by the plain means that every browser has.

/** Asks for a file; null where none was picked. */
export const pickFile = async (accept: string): Promise<File | null> =>
  (await picked({ accept, multiple: false }))[0] ?? null;

/** Asks for one or several; none where none was picked. */
export const pickFiles = (accept: string): Promise<readonly File[]> => picked({ accept, multiple: true });

/** What one is asked with is held until one has answered: a field that nothing holds may be gone before. */
const asking: { field: HTMLInputElement | null } = { field: null };

const picked = (wishes: { readonly accept: string; readonly multiple: boolean }): Promise<readonly File[]> =>
  new Promise((resolve) => {
    const input = Object.assign(document.createElement('input'), { type: 'file', ...wishes });
    input.onchange = () => resolve([...(input.files ?? [])]);
    input.oncancel = () => resolve([]);
    asking.field = input;
    input.click();
  });
