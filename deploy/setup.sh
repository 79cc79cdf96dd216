# shellcheck shell=sh
# Sourced by deploy/try and deploy/test, from the folder above: `set_up KIND LOCK` makes .venv from a lock file, once.
#
# Wants sh, the core utilities, Python 3.11 or newer with venv, and a package index; uses uv where it is on the PATH.
# What was made is written down last, in .venv/made-from: a set-up that was interrupted, or made for other locks, for
# another Python or in another folder, is made anew. A .venv that was made for the tests serves a try-out as well.
# While a script runs it holds a lock that the system itself lets go of, so that none takes .venv from under another.

root=$(pwd -P)
made=.venv/made-from
installed=.venv/installed-from
unset PYTHONHOME PYTHONPATH
export PIP_USER=0 PIP_DISABLE_PIP_VERSION_CHECK=1 PIP_NO_INPUT=1
# uv, like pip, trusts what this machine trusts: an index behind a company's own certificate. (Its names, new and old.)
export UV_SYSTEM_CERTS=1 UV_NATIVE_TLS=1
exec 9<deploy/setup.sh

stop() {
    printf '%s\n' "$1" >&2
    exit 1
}

set_up() {
    if is_ready "$1"; then
        python=.venv/bin/python
        hold SH
        is_ready "$1" && return
    fi
    uv=''
    if uv --version >/dev/null 2>&1; then uv=uv; fi
    choose_python
    [ -w . ] || stop_unwritable
    hold EX
    if ! is_ready "$1"; then
        printf 'Setting up (once, about a minute)…\n'
        started=$(date +%s)
        { is_made "$1" && has_installer; } || make "$1" "$2"
        install_project
        printf 'Set up in %s s.\n' "$(($(date +%s) - started))"
    fi
    hold SH
}

is_ready() {
    is_made "$1" && [ -f "$installed" ] && [ "$(cat "$installed")" = "$(cksum pyproject.toml)" ]
}

# Whether .venv is whole and serves this kind of run.
is_made() {
    [ -x .venv/bin/python ] && [ -f "$made" ] || return 1
    found=$(cat "$made")
    [ "$found" = "$(show_made test)" ] || { [ "$1" = try ] && [ "$found" = "$(show_made try)" ]; }
}

# What a set-up of this kind was made from: a line each for kind, folder, machine and Python, and one for each lock.
show_made() {
    printf '%s\n' "$1" "$root"
    uname -sm
    .venv/bin/python -c 'import sys; print("Python %d.%d" % sys.version_info[:2])' 2>/dev/null || echo 'no Python'
    cksum requirements.lock deploy/test.lock
}

# Sets `python` to the first on the PATH that will do.
choose_python() {
    python='' old='' bare=''
    for name in python3 python3.14 python3.13 python3.12 python3.11; do
        version=$("$name" -c 'import sys; print("%d.%d" % sys.version_info[:2])' 2>/dev/null) || continue
        case $version in
        3.1[1-9] | 3.[2-9][0-9]) ;;
        *)
            old=${old:-$version}
            continue
            ;;
        esac
        if [ -z "$uv" ] && ! "$name" -c 'import ensurepip, venv' 2>/dev/null; then
            bare=${bare:-$version}
            continue
        fi
        python=$(command -v "$name")
        return
    done
    [ -z "$bare" ] || stop "Python $bare is here without its venv module: install it (on Debian and Ubuntu the package python3-venv) and start again."
    [ -z "$old" ] || stop "Chalkpost needs Python 3.11 or newer, and the one here is $old: install a newer one and start again."
    stop "Chalkpost needs Python 3.11 or newer, and there is none on the PATH: install it and start again."
}

# Holds the lock, alone (EX) or with others (SH), until this process and what it starts end.
hold() {
    "$python" -c '
import fcntl, signal, sys
signal.signal(signal.SIGINT, signal.SIG_DFL)
how = getattr(fcntl, "LOCK_" + sys.argv[1])
try:
    fcntl.flock(9, how | fcntl.LOCK_NB)
except BlockingIOError:
    print("Another deploy/try or deploy/test is at work in this folder: this one goes on when that has ended.", file=sys.stderr)
    fcntl.flock(9, how)
except OSError:
    pass  # a file system without locks
' "$1" 9<&9
}

# Makes .venv with the packages of the lock, each checked against its hash.
make() {
    rm -rf .venv 2>/dev/null || stop "The old .venv in $root can't be removed: remove it as the user who made it and start again."
    mkdir .venv 2>/dev/null || stop_unwritable
    said=$(if [ -n "$uv" ]; then uv venv --allow-existing --python "$python" .venv; else "$python" -m venv .venv; fi 2>&1) ||
        explain "$2"
    said=$(packages --require-hashes -r "$2" 2>&1) || explain "$2"
    show_made "$1" >"$made.new"
    mv "$made.new" "$made"
}

# Puts the project itself into .venv, as a link to this folder.
install_project() {
    said=$(packages --no-deps --no-build-isolation --editable . 2>&1) || explain pyproject.toml
    cksum pyproject.toml >"$installed"
}

has_installer() {
    [ -n "$uv" ] || .venv/bin/python -c 'import pip' 2>/dev/null
}

packages() {
    if [ -n "$uv" ]; then
        uv pip install --no-progress --python .venv/bin/python --compile-bytecode "$@"
    else
        .venv/bin/python -m pip install --progress-bar off "$@"
    fi
}

stop_unwritable() {
    stop "Nothing can be written in $root, where .venv is to be made: copy this folder to one of your own and start there."
}

# Ends with one sentence for a set-up that failed; all that was said about it is in a file.
explain() {
    log=.venv/set-up.log
    printf '%s\n' "$said" >"$log" 2>/dev/null || log='nowhere, since nothing can be written'
    case $said in
    *'No space left on device'*)
        stop "The disk is full: make room (about 400 MB) and start again."
        ;;
    *'DO NOT MATCH THE HASHES'* | *[Hh]'ash mismatch'*)
        stop "A package is not the one that $1 names, so nothing was set up: look at which package index is in use (details in $log)."
        ;;
    *'connection broken by'* | *'Failed to establish'* | *'name resolution'* | *'Max retries'* | *'timed out'* | *ProxyError* | \
        *SSLError* | *'Failed to fetch'* | *'error sending request'* | *'tcp connect error'* | *'dns error'*)
        stop "The package index can't be reached: look at the network, or at pip's or uv's settings for an index of your own, and start again (details in $log)."
        ;;
    esac
    stop "The set-up failed, and $log says why; its last line is: $(tail -n 1 "$log")"
}
