export function readyWorkroom(root: string, say: (line: string) => void): Promise<string>;
