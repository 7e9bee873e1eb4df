# Installs what is missing of the named groups of packages.txt. To be read in with `.` by a POSIX sh script:
#   install_missing /path/to/checkout program tests

install_missing() {
    wanted=$(
        checkout=$1
        shift
        for group in "$@"; do
            awk -v group="[$group]" '/^\[/ { inside = ($1 == group); next } inside && NF && !/^#/ { print $1 }' \
                "$checkout/.ci/packages.txt"
        done
    )
    if ! command -v dpkg-query >/dev/null 2>&1; then
        echo "This is not a Debian system, so nothing was installed; it needs the like of:" $wanted >&2
        return 0
    fi
    missing=$(
        # A package never heard of prints nothing.
        present=$(dpkg-query -W -f '${db:Status-Status} ${Package}\n' $wanted 2>/dev/null || true)
        for package in $wanted; do
            printf '%s\n' "$present" | grep -q -x -F "installed $package" || echo "$package"
        done
    )
    [ -n "$missing" ] || return 0

    echo "Installing:" $missing
    as_root=
    if [ "$(id -u)" -ne 0 ]; then
        if ! command -v sudo >/dev/null 2>&1; then
            echo "These packages are missing and there is no sudo to install them; as root, run: apt-get install" \
                $missing >&2
            return 1
        fi
        as_root=sudo
    fi
    if ! $as_root apt-get update -q >/dev/null ||
        ! $as_root env DEBIAN_FRONTEND=noninteractive apt-get install -q -y --no-install-recommends $missing >/dev/null
    then
        echo "The packages could not be installed (see above); install them by hand and start again:" $missing >&2
        return 1
    fi
}
