export function installPackages(root: string, say: (line: string) => void): void;
