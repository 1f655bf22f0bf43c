export function readyBundle(root: string, say: (line: string) => void): Promise<string>;
