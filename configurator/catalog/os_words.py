"""What an operating system says of a file or folder that it denies."""

from configurator.kernel.tongue import wording

# Python tells these in English whatever the language of the machine; what is not among them stays as it is.
KNOWN = (
    wording("Permission denied"),
    wording("Operation not permitted"),
    wording("No such file or directory"),
    wording("Not a directory"),
    wording("Is a directory"),
    wording("Read-only file system"),
    wording("No space left on device"),
    wording("File name too long"),
    wording("Input/output error"),
)


def os_words(error: OSError) -> list[float | str]:
    """Return why an operating system denies something, as a term of a sentence."""
    return [error.strerror or type(error).__name__, "text"]
