//! Bytes as text for stores that count UTF-16 code units: 15 bits to a unit, all
//! of them letters and signs of the basic plane, far from surrogates, so that
//! every store and every file takes them as they are.

/// The lowest of the 32,768 code units used: they are all letters and signs of
/// the basic plane, far from surrogates.
const FIRST: u32 = 0x3400;

/// Bytes as text, 15 bits to a UTF-16 code unit.
#[must_use]
pub fn to_units(bytes: &[u8]) -> String {
    let (mut held, mut bits) = (0_u32, 0);
    let mut text = String::new();
    for byte in bytes {
        held = held << 8 | u32::from(*byte);
        bits += 8;
        if bits >= 15 {
            bits -= 15;
            text.extend(char::from_u32(FIRST + (held >> bits)));
            held &= (1 << bits) - 1;
        }
    }
    // A one behind the last byte says where the padding begins.
    let last = (held << 1 | 1) << (14 - bits);
    text.extend(char::from_u32(FIRST + last));
    text
}

/// The bytes of such a text; `None` where it is none.
#[must_use]
pub fn from_units(text: &str) -> Option<Vec<u8>> {
    let (mut held, mut bits) = (0_u32, 0);
    let mut bytes = Vec::new();
    // The mark lies in the last unit, or something was cut off or added.
    text.chars()
        .next_back()
        .filter(|c| u32::from(*c) != FIRST)?;
    for letter in text.chars() {
        let value = u32::from(letter)
            .checked_sub(FIRST)
            .filter(|v| *v < 1 << 15)?;
        held = held << 15 | value;
        bits += 15;
        while bits >= 8 {
            bits -= 8;
            bytes.push((held >> bits) as u8);
            held &= (1 << bits) - 1;
        }
    }
    if held != 0 {
        // The mark may lie in the bits that fill no byte.
        bytes.push((held << (8 - bits)) as u8);
    }
    while bytes.last() == Some(&0) {
        bytes.pop();
    }
    (bytes.pop() == Some(0x80)).then_some(bytes)
}

#[cfg(test)]
mod tests {
    use super::*;

    #[test]
    fn units_carry_any_bytes() {
        let mut lot = fastrand::Rng::with_seed(5);
        for length in 0..200 {
            let bytes: Vec<u8> = (0..length).map(|_| lot.u8(..)).collect();
            assert_eq!(from_units(&to_units(&bytes)), Some(bytes));
            assert_eq!(
                from_units(&to_units(&vec![0; length])),
                Some(vec![0; length])
            );
        }
        for not in ["", "a", "\u{3400}", "\u{b400}", "\u{3400}\u{3400}"] {
            assert_eq!(from_units(not), None, "{not:?}");
        }
    }
}
