import type { Files } from './files.ts';

export const browserFiles: Files = {
  save(name, type, text) {
    const url = URL.createObjectURL(new Blob([text], { type }));
    const link = document.createElement('a');
    link.href = url;
    link.download = name;
    link.click();
    setTimeout(() => URL.revokeObjectURL(url), 10_000);
  },

  async open(accept) {
    const [file] = await chosenFiles(accept, false);
    return file === undefined ? null : { name: file.name, text: await file.text() };
  },

  async openAll(accept) {
    const files = await chosenFiles(accept, true);
    return Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() })));
  },
};

function chosenFiles(accept: string, multiple: boolean): Promise<readonly File[]> {
  return new Promise((resolve) => {
    const input = document.createElement('input');
    Object.assign(input, { type: 'file', accept, multiple });
    input.addEventListener('cancel', () => resolve([]));
    input.addEventListener('change', () => resolve([...(input.files ?? [])]));
    input.click();
  });
}
